import { problem } from '@tiegel/contract/terms';

const ofThisComputer = /^(?:localhost|127(?:\.\d{1,3}){3}|\[::1\])$/;

/**
 * What says to a service who asks: the token of TIEGEL_TOKEN, where there is one. No option, for everybody on a
 * computer can read the words of a command.
 *
 * @param warn is told where the token would cross a network as plain text
 * @throws ProblemError configuration/invalid for what no header can carry; the token is not shown
 */
export function tokenHeader(
  address: string,
  warn: (text: string) => void,
  { TIEGEL_TOKEN }: NodeJS.ProcessEnv = process.env,
): { authorization?: string } {
  const token = TIEGEL_TOKEN?.trim();
  if (!token) return {};
  if (!/^[\x21-\x7e]+$/.test(token)) {
    const needed = 'the token as it was given to you, one word';
    throw problem('configuration/invalid', { name: 'TIEGEL_TOKEN', value: '(not shown)', needed });
  }
  const { protocol, hostname, host } = new URL(address);
  if (protocol === 'http:' && !ofThisComputer.test(hostname))
    warn(
      `WARNING: your token goes to ${host} as plain text, for whoever listens on the network to use. If the service speaks TLS, begin its address with https://.`,
    );
  return { authorization: `Bearer ${token}` };
}
