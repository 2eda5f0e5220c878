import { z } from 'zod';
import { amountsSchema } from '../alloy/amounts.ts';

/** An alloy that somebody has made, as far as the data know. */
const knownAlloySchema = z.object({
  composition: amountsSchema.describe('at.%'),
  name: z.string(),
  phases: z.string().nullable().describe('What most publications report, or what was brought in'),
  process: z.string().nullable(),
  source: z.string().nullable(),
  doi: z.array(z.string()),
  own: z.boolean().describe('Brought in, rather than of the data of the program'),
  import: z.int().nullable().describe('Number of the import'),
});
export type KnownAlloyView = z.infer<typeof knownAlloySchema>;

export const knownAlloysSchema = z
  .object({ total: z.int().describe('How many meet the filters'), items: z.array(knownAlloySchema) })
  .meta({ id: 'KnownAlloys' });
export type KnownAlloysView = z.infer<typeof knownAlloysSchema>;
