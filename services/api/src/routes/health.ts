import { healthSchema } from '@tiegel/contract';
import { z } from 'zod';
import project from '../../../../package.json' with { type: 'json' };
import type { Parts, Server } from '../parts.ts';
import { problemAnswers } from '../problems/problemAnswers.ts';

const tags = ['service'];

/**
 * GET /health: the process answers. GET /ready: searches are accepted, which they are while the
 * ledger stands, whether or not a worker is present; it ends when the service begins to stop.
 */
export function healthRoutes(app: Server, { workers, openNetwork }: Parts): void {
  app.get(
    '/health',
    {
      schema: {
        summary: 'The service runs',
        tags,
        response: {
          200: healthSchema,
          ...problemAnswers(),
        },
      },
    },
    () => ({
      ...{ status: 'running' as const, version: project.version },
      ...{ openNetwork, uptimeSeconds: process.uptime() },
    }),
  );

  app.get(
    '/ready',
    {
      schema: {
        summary: 'Searches are accepted',
        tags,
        response: {
          200: z.object({
            ready: z.literal(true),
            workers: z
              .number()
              .int()
              .nullable()
              .describe('Scoring threads present, null while that is not known'),
          }),
          ...problemAnswers(503),
        },
      },
    },
    async () => ({ ready: true as const, workers: await workers().catch(() => null) }),
  );
}
