export * from './embeddedQueue.ts';
export * from './queue.ts';
export { redisAddress } from './redisAddress.ts';
export type { Log } from './redisLine.ts';
export * from './redisQueue.ts';
export * from './redisWorker.ts';
export type * from './scoring.ts';
