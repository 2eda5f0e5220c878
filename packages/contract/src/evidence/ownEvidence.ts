import { z } from 'zod';
import { intervalSchema } from './interval.ts';

const count = z.number().int();
const score = z.number().nullable();

/** Rules and the phase estimate on melts of one's own, or on alloys that were brought in. */
export const ownEvidenceSchema = z
  .object({
    melts: count.describe('Melts of your own whose phases were observed'),
    systems: count,
    criteria: z.array(
      z.object({
        id: z.string(),
        ...{ n: count, tp: count, fp: count, fn: count, tn: count },
        balancedAccuracy: score.describe('null: not both a melt of the class and one that is not'),
        interval: intervalSchema.nullable().describe('null: too few melts'),
      }),
    ),
    phaseEstimate: z.object({
      n: count,
      withoutBasis: count,
      ...{ baseRate: score, auc: score, interval: intervalSchema.nullable() },
      ...{ brier: score, logLoss: score, fourClassAccuracy: score },
    }),
    trust: z.string(),
  })
  .meta({ id: 'OwnEvidence' });
export type OwnEvidence = z.infer<typeof ownEvidenceSchema>;
