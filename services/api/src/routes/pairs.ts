import { pairColumns, pairRecords } from '@tiegel/elements';
import { z } from 'zod';
import type { Server } from '../parts.ts';
import { problemAnswers } from '../problems/problemAnswers.ts';

const [{ meaning, unit }] = pairColumns;
const pairSchema = z
  .object({
    a: z.string(),
    b: z.string(),
    mixingEnthalpy: z.number().describe(`${meaning} Unit: ${unit}.`),
  })
  .meta({ id: 'Pair' });

/** GET /pairs: the pair enthalpies, each pair once. */
export function pairRoute(app: Server): void {
  app.get(
    '/pairs',
    {
      schema: {
        summary: 'Enthalpies of mixing of element pairs',
        tags: ['data'],
        response: { 200: z.array(pairSchema), ...problemAnswers() },
      },
    },
    () => pairRecords(),
  );
}
