import { z } from 'zod';
import { intervalSchema } from './interval.ts';

const number = z.number();
const count = number.int();

/**
 * How the phase estimate did on alloys of systems that it had not seen. Scores are of one solution
 * or not, unless they say otherwise.
 */
export const phaseRecordSchema = z.object({
  validation: z.string(),
  n: count,
  systems: count,
  auc: number,
  brier: number,
  brierSkill: number,
  logLoss: number,
  calibrationError: number,
  balancedAccuracy: number,
  fourClassAccuracy: number,
  fccAgainstBcc: number,
  conformalCoverage: number.describe('Share of alloys whose reported class was among the likely ones'),
  intervals: z
    .object({ auc: intervalSchema, brierSkill: intervalSchema, balancedAccuracy: intervalSchema })
    .describe('95 %, from resampling whole systems'),
  aucSpread: number.describe('Standard deviation of the AUC from draw to draw of the folds'),
  reliability: z.array(
    z.object({
      from: number,
      to: number,
      count: number.describe('Alloys, mean over the draws'),
      said: number.nullable().describe('Mean probability said; null without alloys'),
      happened: number.nullable().describe('Share that was one solution; null without alloys'),
    }),
  ),
  byDistance: z
    .array(
      z.object({
        from: number,
        to: number,
        alloys: count,
        auc: number.nullable(),
        brierSkill: number.nullable(),
      }),
    )
    .describe('By the share of atoms that differ from the nearest alloy of another system'),
  baseRate: number.describe('Share of the alloys that are one solution'),
  baseRateLogLoss: number.describe('Of always saying the share'),
  baseRateBrier: number.describe('Of always saying the share'),
  bestRule: z
    .object({ id: z.string(), name: z.string(), balancedAccuracy: number, interval: intervalSchema })
    .nullable(),
  trust: z.string(),
});
