import { z } from 'zod';
import { amountsSchema } from './amounts.ts';

const bound = z.number().exactOptional();
const value = z.number().nullable();
const verdict = {
  passes: z.boolean().nullable().describe('null: no value, or a criterion of other alloys'),
  canFlip: z.boolean().describe('Whether weighing alone can turn it'),
};

/** What the step of a balance leaves certain of an alloy. */
export const weighingErrorSchema = z
  .object({
    masses: amountsSchema.describe('g of each element'),
    shares: z
      .record(z.string(), z.object({ value: z.number(), least: z.number(), greatest: z.number() }))
      .describe('at.%'),
    quantities: z.record(
      z.string(),
      z.object({
        ...{ value, least: value, greatest: value },
        mayLack: z.boolean().describe('Some outcome has no value though others have one'),
      }),
    ),
    limits: z.array(
      z.object({ limit: z.object({ quantity: z.string(), min: bound, max: bound }), ...verdict }),
    ),
    criteria: z.record(z.string(), z.object(verdict)),
    trust: z.string(),
  })
  .meta({ id: 'WeighingError' });
export type WeighingError = z.infer<typeof weighingErrorSchema>;
