import { type QuantityView, quantitySchema, typicalRangesSchema } from '@tiegel/contract';
import { typicalRange } from '@tiegel/insight';
import { quantities, quantitiesTold } from '@tiegel/screening';
import { z } from 'zod';
import type { Server } from '../parts.ts';
import { problemAnswers } from '../problems/problemAnswers.ts';

const told: QuantityView[] = quantitiesTold();

let typical: ReturnType<typeof typicalRange> | undefined;

/** GET /quantities/typical: where the published alloys lie. Worked out when it is first asked for. */
function typicalRoute(app: Server): void {
  app.get(
    '/quantities/typical',
    {
      schema: {
        summary: 'Quartiles of every quantity over the published alloys, at the usual conditions',
        tags: ['data'],
        response: { 200: typicalRangesSchema, ...problemAnswers() },
      },
    },
    () => {
      typical ??= typicalRange(quantities.map(({ id }) => id));
      return typical;
    },
  );
}

/** GET /quantities: the definitions of everything that is said of a composition, without the formula's tree. */
export function quantityRoute(app: Server): void {
  typicalRoute(app);
  app.get(
    '/quantities',
    {
      schema: {
        summary: 'Every quantity: unit, formula, meaning, source',
        tags: ['data'],
        response: { 200: z.array(quantitySchema), ...problemAnswers() },
      },
    },
    () => told,
  );
}
