export * from './embeddedQueue.ts';
export * from './queue.ts';
export { redisAddress } from './redisAddress.ts';
export type * from './scoring.ts';
