import { type ProblemCode, ProblemError, problems } from '@tiegel/contract/terms';
import { pino } from 'pino';
import { readCertificate } from './access/certificate.ts';
import { isLoopback } from './access/isLoopback.ts';
import { type Configuration, readConfiguration } from './configuration.ts';
import { listen } from './listen.ts';
import { openParts } from './openParts.ts';
import { buildServer } from './server.ts';

/** However long the parts take to close: whoever stopped the process wants it gone. */
const longestStopMs = 15_000;

const standardError = 2;
const logger = pino({ name: 'api', level: 'warn' }, pino.destination({ fd: standardError, sync: true }));

async function start(configuration: Configuration): Promise<void> {
  warnOfOpenNetwork(configuration);
  warnOfOpenTokens(configuration);
  const certificate = readCertificate(configuration.tls);
  const { parts, close } = await openParts(configuration, logger);
  const app = await buildServer(parts, logger, certificate);
  const address = await listen(app, configuration).catch(async (error) => {
    await close();
    throw error;
  });
  stopOnSignal(async () => {
    await app.close();
    await close();
  });
  console.log(`Tiegel is at ${address}`);
}

function warnOfOpenNetwork({ openNetwork, host, port }: Configuration): void {
  if (!openNetwork) return;
  console.error(
    [
      `WARNING: OPEN_NETWORK=yes. Anyone who reaches ${host}, port ${port}, can read, start and cancel every search`,
      'and replace the price list; nobody is asked for a name or a password. See SECURITY.md.',
    ].join('\n'),
  );
}

function warnOfOpenTokens({ asksForTokens, tls, host }: Configuration): void {
  if (!asksForTokens || tls !== null || isLoopback(host)) return;
  console.error(
    [
      'WARNING: without TLS_CERTIFICATE and TLS_KEY, tokens cross the network as plain text, unless a proxy of',
      'yours adds TLS in front of this server. See SECURITY.md.',
    ].join('\n'),
  );
}

function stopOnSignal(stop: () => Promise<void>): void {
  let stopping = false;
  const onSignal = async () => {
    if (stopping) return;
    stopping = true;
    setTimeout(() => process.exit(1), longestStopMs).unref();
    await stop();
    process.exit(0);
  };
  for (const signal of ['SIGINT', 'SIGTERM'] as const) process.on(signal, onSignal);
}

/** A start that fails says why in the words of the table; anything else keeps its stack. */
function giveUp(error: unknown): never {
  if (!(error instanceof ProblemError)) throw error;
  for (const { detail, remedy } of error.faults) console.error(`${detail} ${remedy}`);
  process.exit(Math.max(...error.faults.map(({ code }: { code: ProblemCode }) => problems[code].exit)));
}

/** Starts the server by the environment's settings and lets it run until it is asked to stop; ends the process where that fails. */
export async function run(): Promise<void> {
  try {
    await start(readConfiguration(process.env));
  } catch (error) {
    giveUp(error);
  }
}
