import { z } from 'zod';
import { amountsSchema, valuesSchema } from './amounts.ts';
import { demixingSchema } from './demixing.ts';
import { phaseSchema } from './phase.ts';

/** One alloy that comes of replacing an element of another. */
export const substituteSchema = z
  .object({
    replaced: amountsSchema,
    by: amountsSchema,
    composition: amountsSchema,
    quantities: valuesSchema,
    changes: valuesSchema.describe('Value minus that of the alloy; null where either has none'),
    phase: phaseSchema.nullable(),
    demixing: demixingSchema.nullable(),
    cost: z.number().nullable().describe('Currency of the price list in force, per kg'),
    limits: z.array(z.boolean().nullable()).describe('In the order of the limits: kept, not kept, no value'),
    outsideSpace: z
      .array(z.string())
      .describe('What of the space it breaks, in words; empty where it lies in it or none was sent'),
    score: z.number().nullable().describe('Unlikeness to the alloy, from 0 to 1'),
  })
  .meta({ id: 'Substitute' });
export type Substitute = z.infer<typeof substituteSchema>;

export const substitutesSchema = z.object({
  items: z
    .array(substituteSchema)
    .describe('Those that keep all limits and lie in the space first, the most alike first'),
});
