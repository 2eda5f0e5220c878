/** The carrier over Redis, apart from the rest: what it is built on is a third of what a command would load. */
export type { Log } from './redisLine.ts';
export * from './redisQueue.ts';
export * from './redisWorker.ts';
