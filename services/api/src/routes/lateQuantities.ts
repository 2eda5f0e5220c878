import { lateQuantities } from '@tiegel/insight';
import { z } from 'zod';
import type { Server } from '../parts.ts';
import { problemAnswers } from '../problems/problemAnswers.ts';

const lateQuantitySchema = z
  .object({
    id: z.string(),
    name: z.string(),
    symbol: z.string(),
    unit: z.string(),
    notation: z.string().describe('How it is found, in the usual notation'),
    meaning: z.string(),
    decimals: z.number().int(),
    source: z.object({
      authors: z.string(),
      year: z.number().int().nullable(),
      where: z.string(),
      checked: z.string(),
    }),
    caution: z.string(),
  })
  .meta({ id: 'LateQuantity' });

const told: z.infer<typeof lateQuantitySchema>[] = lateQuantities.map(({ compute: _, ...rest }) => rest);

/** GET /late-quantities: what is worked out for kept candidates only, and may be limited under keptOnly. */
export function lateQuantityRoute(app: Server): void {
  app.get(
    '/late-quantities',
    {
      schema: {
        summary: 'Quantities of kept candidates: what keptOnly may limit',
        tags: ['data'],
        response: { 200: z.array(lateQuantitySchema), ...problemAnswers() },
      },
    },
    () => told,
  );
}
