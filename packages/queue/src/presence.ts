import type { Redis } from 'ioredis';
import { prefix } from './redisNames.ts';

const everyone = `${prefix}:workers`;
const keyOf = (worker: string): string => `${prefix}:worker:${worker}`;
/** A worker that has not said for this long that it is there counts as gone. */
const presenceMs = 5000;

/** Says that a worker is there, with how many scoring threads; to be said again every second or so. */
export async function announcePresence(redis: Redis, worker: string, threads: number): Promise<void> {
  await redis.multi().set(keyOf(worker), threads, 'PX', presenceMs).sadd(everyone, worker).exec();
}

export async function withdrawPresence(redis: Redis, worker: string): Promise<void> {
  await redis.multi().del(keyOf(worker)).srem(everyone, worker).exec();
}

/** Scoring threads of all workers that are there. */
export async function presentThreads(redis: Redis): Promise<number> {
  const workers = await redis.smembers(everyone);
  if (workers.length === 0) return 0;
  const threads = await redis.mget(workers.map(keyOf));
  const gone = workers.filter((_, index) => threads[index] === null);
  if (gone.length > 0) await redis.srem(everyone, ...gone);
  return threads.reduce((sum, one) => sum + Number(one ?? 0), 0);
}
