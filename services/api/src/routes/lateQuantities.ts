import { type LateQuantityView, lateQuantitySchema } from '@tiegel/contract';
import { lateQuantities } from '@tiegel/insight';
import { z } from 'zod';
import type { Server } from '../parts.ts';
import { problemAnswers } from '../problems/problemAnswers.ts';

const told: LateQuantityView[] = lateQuantities.map(({ compute: _, ...rest }) => rest);

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
