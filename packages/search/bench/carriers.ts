import { type ChunkQueue, embeddedQueue } from '@tiegel/queue';
import { redisQueue } from '@tiegel/queue/redis';
import { startWorker } from '../../../test/fixtures/processes.ts';
import { redisIsHere, redisServer } from '../../../test/fixtures/redisServer.ts';
import { until } from '../../../test/fixtures/until.ts';

/** Workers that searches are measured on. */
export interface Carrier {
  name: string;
  /** scoring threads, over all processes */
  workers: number;
  queue: ChunkQueue;
  /** Ids of the processes beside this one. */
  workerPids: number[];
  redisPid: number | null;
  close(): Promise<void>;
}

const threadFile = new URL(import.meta.resolve('../src/working/scoringThread.ts'));

/** Threads of this process. */
export function threads(workers: number): Carrier {
  const queue = embeddedQueue({ threadFile, threads: workers });
  return {
    name: `${workers} ${workers === 1 ? 'thread' : 'threads'}`,
    workers,
    queue,
    workerPids: [],
    redisPid: null,
    close: () => queue.close(),
  };
}

/** Worker processes of one thread each, on a Redis of their own with its append-only file; null where there is no Redis. */
export async function processes(workers: number): Promise<Carrier | null> {
  if (!redisIsHere()) return null;
  const redis = await redisServer({ appendOnly: true });
  const running = Array.from({ length: workers }, () => startWorker({ redisUrl: redis.url, workers: 1 }));
  const queue = redisQueue({ url: redis.url });
  await until('every worker is there', async () => (await queue.workers()) === workers);
  return {
    name: `BullMQ, ${workers} ${workers === 1 ? 'process' : 'processes'}`,
    workers,
    queue,
    workerPids: running.map(({ pid }) => pid),
    redisPid: redis.pid,
    async close() {
      await queue.close();
      await Promise.all(running.map((worker) => worker.stop()));
      await redis.close();
    },
  };
}
