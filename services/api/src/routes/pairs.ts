import { pairColumns, pairRecords } from '@tiegel/elements';
import { z } from 'zod';
import type { Parts, Server } from '../parts.ts';
import { problemAnswers } from '../problems/problemAnswers.ts';

const [{ meaning, unit }] = pairColumns;
const pairSchema = z
  .object({
    a: z.string(),
    b: z.string(),
    mixingEnthalpy: z.number().describe(`${meaning} Unit: ${unit}.`),
  })
  .meta({ id: 'Pair' });

/** GET /pairs: the pair enthalpies in force, each pair once. */
export function pairRoute(app: Server, { searches }: Parts): void {
  app.get(
    '/pairs',
    {
      schema: {
        summary: 'Enthalpies of mixing of element pairs, those of your own in the place of the others',
        tags: ['data'],
        response: { 200: z.array(pairSchema), ...problemAnswers() },
      },
    },
    () => pairRecords(searches.pairs()),
  );
}
