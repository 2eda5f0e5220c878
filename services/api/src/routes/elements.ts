import { columns, elementRecords, priceColumn } from '@tiegel/elements';
import { z } from 'zod';
import type { Parts, Server } from '../parts.ts';
import { problemAnswers } from '../problems/problemAnswers.ts';

const values = Object.fromEntries(
  columns.map(({ id, unit, meaning, holds }) => [
    id,
    (holds === 'numbers' ? z.number() : z.string())
      .nullable()
      .describe(unit === '' ? meaning : `${meaning} Unit: ${unit}.`),
  ]),
);

const elementSchema = z
  .object({
    symbol: z.string(),
    atomicNumber: z.number().int(),
    name: z.string(),
    period: z.number().int(),
    group: z.number().int().nullable(),
    family: z.string(),
    ...values,
    price: z.number().nullable().describe(`${priceColumn.meaning} Unit: ${priceColumn.unit}.`),
    hazards: z.array(z.object({ kind: z.string(), text: z.string(), source: z.string() })),
    sources: z.record(z.string(), z.string()).describe('The code of the source of each value'),
  })
  .meta({ id: 'Element', description: 'What is known of an element; null where a value is not known.' });

/** GET /elements: every element with data, by atomic number, priced from the list in force. */
export function elementRoute(app: Server, { searches }: Parts): void {
  app.get(
    '/elements',
    {
      schema: {
        summary: 'Every element with data',
        tags: ['data'],
        response: { 200: z.array(elementSchema), ...problemAnswers() },
      },
    },
    () => elementRecords(searches.prices()) as unknown as z.infer<typeof elementSchema>[],
  );
}
