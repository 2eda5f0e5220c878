import { z } from 'zod';
import { amountsSchema } from './alloy/amounts.ts';

/** Published alloys and own melts with computed values, to be laid over the candidates of a search. */
export const publishedOverSchema = z
  .object({
    quantities: z.array(z.string()).describe('As asked for'),
    items: z.array(
      z.object({
        formula: z.string().describe('As published; of an alloy that was brought in its name'),
        composition: amountsSchema,
        inPool: z.boolean().describe('Made of elements of the pool of the search alone'),
        phases: z.string().nullable().describe('What most publications report'),
        references: z.number().int().describe('Publications'),
        doi: z.array(z.string()),
        own: z.boolean().describe('Brought in, rather than of the published alloys of the program'),
        values: z.array(z.number().nullable()).describe('In the order of `quantities`'),
      }),
    ),
    melts: z.array(
      z.object({
        id: z.string(),
        name: z.string(),
        composition: amountsSchema.describe('at.%, as weighed'),
        phases: z.string().nullable().describe('As observed; null: not looked at'),
        values: z.array(z.number().nullable()),
      }),
    ),
    dataVersion: z.string().describe("Of the values: today's data, which may not be those of the search"),
  })
  .meta({ id: 'PublishedAlloys' });
export type PublishedOver = z.infer<typeof publishedOverSchema>;
