import { problem } from '@tiegel/contract/terms';

/** Of a service on this computer whose port nobody changed. */
export const usualAddress = 'http://127.0.0.1:4270';

/**
 * Where the service answers: the address given, else that of the environment, else the usual one of this computer;
 * without a slash at the end.
 * @throws ProblemError server/address
 */
export function serverAddress(
  given: string | undefined,
  { TIEGEL_SERVER }: NodeJS.ProcessEnv = process.env,
): string {
  const address = given ?? (TIEGEL_SERVER || usualAddress);
  const url = URL.canParse(address) ? new URL(address) : null;
  const whole = url !== null && /^https?:$/.test(url.protocol) && url.search === '' && url.hash === '';
  if (!whole) throw problem('server/address', { address });
  return url.href.replace(/\/+$/, '');
}
