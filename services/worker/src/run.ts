import { writeFileSync } from 'node:fs';
import { ProblemError, problem } from '@tiegel/contract/terms';
import { type Log, type RedisWorker, redisWorker } from '@tiegel/queue/redis';
import { readConfiguration } from './configuration.ts';

/** How long a worker that is asked to end may take to finish its chunks (ms), which last about a second each. */
const finishMs = 8000;

const threadFile = new URL(import.meta.resolve('@tiegel/search/scoringThread'));

const log: Log = (level, text) => console.log(`${new Date().toISOString()} ${level} ${text}`);

function start(): RedisWorker {
  const { redisUrl, workers, aliveFile } = readConfiguration(process.env);
  touch(aliveFile);
  const onBeat = () => touch(aliveFile);
  const worker = redisWorker({ url: redisUrl, threadFile, threads: workers, log, onBeat });
  log('info', `The worker has started; scoring threads: ${workers}.`);
  return worker;
}

function touch(file: string | null): void {
  if (file === null) return;
  try {
    writeFileSync(file, '');
  } catch {
    const needed = 'a file that the worker may write';
    throw problem('configuration/invalid', { name: 'ALIVE_FILE', value: file, needed }, '/ALIVE_FILE');
  }
}

function stopOnSignal(worker: RedisWorker): void {
  let stopping = false;
  const stop = async (signal: string) => {
    // The second signal is meant: the chunks are taken over by others once their locks have run out.
    if (stopping) process.exit(1);
    stopping = true;
    log('info', `${signal}: finishing the chunks at hand.`);
    await worker.close(finishMs);
    log('info', 'The worker has ended.');
    process.exit(0);
  };
  process.on('SIGTERM', stop);
  process.on('SIGINT', stop);
}

/** Runs a worker as the environment says until it is asked to end. Settings that are wrong end it with 1. */
export function run(): void {
  try {
    stopOnSignal(start());
  } catch (error) {
    if (!(error instanceof ProblemError)) throw error;
    for (const { detail, remedy } of error.faults) log('error', `${detail} ${remedy}`);
    process.exitCode = 1;
  }
}
