import { demonstration } from '@tiegel/search';
import { z } from 'zod';
import type { Server } from '../parts.ts';
import { problemAnswers } from '../problems/problemAnswers.ts';
import { specificationSchema } from '../specificationSchema.ts';

const told = { ...demonstration, specification: specificationSchema.parse(demonstration.specification) };

/** GET /demonstration: an invented search to begin with, and what to beware of in it. */
export function demonstrationRoute(app: Server): void {
  app.get(
    '/demonstration',
    {
      schema: {
        summary: 'An invented search to begin with',
        tags: ['searches'],
        response: {
          200: z.object({
            story: z.string(),
            cautions: z.array(z.string()),
            specification: specificationSchema,
          }),
          ...problemAnswers(),
        },
      },
    },
    () => told,
  );
}
