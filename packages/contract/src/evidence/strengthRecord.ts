import { z } from 'zod';

const number = z.number();

/** How near computed yield strengths came to the measured ones of a group of published alloys. */
export const strengthRecordSchema = z.object({
  id: z.string(),
  what: z.string(),
  from: number.describe('K'),
  to: number.describe('K'),
  n: number.int(),
  medianError: number.describe('Median of |computed/measured − 1|'),
  rankCorrelation: number.describe("Spearman's"),
  withinFactor: number.describe('Share of computed from two thirds to one and a half times the measured'),
  medianRatio: number.describe('Of computed over measured'),
  farthestRatio: number.describe('Of computed over measured, the farthest from 1'),
});
