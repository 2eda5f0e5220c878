import { z } from 'zod';

/** Where the published alloys lie in a quantity: its quartiles over them. */
const typicalRangeSchema = z.object({ low: z.number(), middle: z.number(), high: z.number() });
export type TypicalRange = z.infer<typeof typicalRangeSchema>;

export const typicalRangesSchema = z
  .record(z.string(), typicalRangeSchema.nullable())
  .describe('By id, in the unit of each; null where too few published alloys have a value')
  .meta({ id: 'TypicalRanges' });
export type TypicalRanges = z.infer<typeof typicalRangesSchema>;
