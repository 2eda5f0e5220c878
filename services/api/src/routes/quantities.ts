import { typicalRangesSchema } from '@tiegel/contract';
import { typicalRange } from '@tiegel/insight';
import { quantities, quantitiesTold } from '@tiegel/screening';
import { z } from 'zod';
import type { Server } from '../parts.ts';
import { problemAnswers } from '../problems/problemAnswers.ts';

const quantitySchema = z
  .object({
    id: z.string(),
    name: z.string(),
    symbol: z.string(),
    unit: z.string().describe("'' for a plain number; 'currency' stands for that of the price list"),
    notation: z.string().describe('The formula in the usual notation'),
    meaning: z.string(),
    range: z.object({ min: z.number().optional(), max: z.number().optional() }),
    decimals: z.number().int().describe('Decimals that mean something in display'),
    source: z.object({
      authors: z.string(),
      year: z.number().int().nullable(),
      where: z.string(),
      checked: z.string().describe('How far anybody compared the formula with the source'),
    }),
    caution: z.string().nullable(),
    basis: z
      .object({ quantity: z.string(), max: z.number() })
      .optional()
      .describe('It means nothing of alloys where this late quantity is above max'),
    needs: z.object({
      elements: z.array(z.string()).describe('Columns of element data that the formula reads'),
      pairs: z.array(z.string()).describe('Columns of pair data that the formula reads'),
      conditions: z.array(z.string()).describe('Conditions of the search that the formula reads'),
    }),
  })
  .meta({ id: 'Quantity' });

const told: z.infer<typeof quantitySchema>[] = quantitiesTold();

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
