import type { FastifyInstance } from 'fastify';
import type { Parts } from './parts.ts';

/**
 * Lets a request that may write wait, where another process keeps the database, before its route
 * does anything: a write that finds it locked waits on the event loop, where nobody else is answered.
 */
export function waitToWrite(app: FastifyInstance, { writable }: Pick<Parts, 'writable'>): void {
  app.addHook('preHandler', async ({ method }) => {
    if (method !== 'GET' && method !== 'HEAD') await writable();
  });
}
