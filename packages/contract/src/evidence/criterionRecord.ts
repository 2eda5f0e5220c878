import { z } from 'zod';
import { intervalSchema } from './interval.ts';

const count = z.number().int().nullable();

/** A published rule and how often it was right on the published alloys. */
export const criterionRecordSchema = z
  .object({
    id: z.string(),
    name: z.string(),
    claim: z.string(),
    formula: z.string(),
    scope: z.string().nullable(),
    positiveClass: z.string(),
    predicts: z.string().nullable().describe('How published labels show that class; null: they cannot'),
    predictsSecondPhase: z
      .boolean()
      .describe('Whether that class is a phase beside the solution: to meet the rule is bad news'),
    source: z.object({
      authors: z.string(),
      year: z.number().int().nullable(),
      where: z.string(),
      checked: z
        .enum([
          'against the paper',
          'from memory',
          'definition',
          'common practice, no source',
          'ours, no source',
        ])
        .describe('How far anybody compared the formula with the source'),
    }),
    caution: z.string().nullable().describe('What to beware of; null: nothing'),
    n: count.describe('Alloys; null, as the counts, where the published alloys cannot test it'),
    tp: count,
    fp: count,
    fn: count,
    tn: count,
    balancedAccuracy: z.number().nullable(),
    interval: intervalSchema.nullable().describe('95 %, from resampling whole systems'),
    untested: z.string().nullable(),
  })
  .meta({ id: 'CriterionRecord' });
export type CriterionRecord = z.infer<typeof criterionRecordSchema>;
