import type { Running } from '../fixtures/childProcess.ts';
import { freePort } from '../fixtures/freePort.ts';
import { type RunningApi, startApi, startWorker } from '../fixtures/processes.ts';
import { redisServer } from '../fixtures/redisServer.ts';
import { temporaryFolder } from '../fixtures/temporaryFolder.ts';
import { until } from '../fixtures/until.ts';
import { threadsPresent } from './overHttp.ts';

export type Part = 'api' | 'worker' | 'redis';

/** Everything that runs together, as real processes, with two scoring threads in all. */
export interface Installation {
  /** the api's address: the same after each restart */
  url(): string;
  /** Sends SIGKILL. */
  kill(part: Part): Promise<void>;
  /** Starts the part again as it was, and waits until it is of use. */
  restart(part: Part): Promise<void>;
  /** Deletes what Redis has stored, while it is down. */
  emptyRedis(): Promise<void>;
  /** What the processes wrote, for a message. */
  output(): string;
  close(): Promise<void>;
}

/** The api alone, scoring in threads of its own. */
export async function embeddedInstallation(): Promise<Installation> {
  const folder = await temporaryFolder('faults');
  const settings = { dataFolder: folder.path, port: await freePort(), workers: 2 };
  let api: RunningApi = await startApi(settings);
  const absent = (part: Part) => new Error(`There is no ${part} in this installation.`);
  return {
    url: () => api.url,
    async kill(part) {
      if (part !== 'api') throw absent(part);
      await api.kill();
    },
    async restart(part) {
      if (part !== 'api') throw absent(part);
      api = await startApi(settings);
    },
    emptyRedis: async () => {
      throw absent('redis');
    },
    output: () => api.output(),
    async close() {
      await api.kill();
      await folder.remove();
    },
  };
}

/** Redis with its append-only file, an api that only collects, and two workers of one thread each. */
export async function redisInstallation(): Promise<Installation> {
  const folder = await temporaryFolder('faults');
  const redis = await redisServer({ appendOnly: true });
  const settings = { dataFolder: folder.path, port: await freePort(), redisUrl: redis.url, workers: 0 };
  const newWorker = () => startWorker({ redisUrl: redis.url, workers: 1 });
  let api: RunningApi = await startApi(settings);
  const workers: Running[] = [newWorker(), newWorker()];
  const written: string[] = [];
  const threads = (count: number) =>
    until(`${count} scoring threads are there`, async () => (await threadsPresent(api.url)) === count);
  await threads(2);

  return {
    url: () => api.url,
    async kill(part) {
      if (part === 'redis') return redis.kill();
      if (part === 'api') return api.kill();
      const [victim] = workers.splice(0, 1);
      await victim!.kill();
      written.push(victim!.output());
    },
    async restart(part) {
      if (part === 'redis') return redis.start();
      if (part === 'api') {
        written.push(api.output());
        api = await startApi(settings);
      } else {
        workers.push(newWorker());
      }
    },
    emptyRedis: () => redis.forget(),
    output: () => [...written, api.output(), ...workers.map((worker) => worker.output())].join('\n'),
    async close() {
      await Promise.all([api.kill(), ...workers.map((worker) => worker.kill())]);
      await redis.close();
      await folder.remove();
    },
  };
}
