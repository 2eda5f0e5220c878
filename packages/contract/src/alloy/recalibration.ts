import { z } from 'zod';

const number = z.number();
const count = number.int();
const counts = z.object({
  melts: count,
  systems: count,
  one: count.describe('melts observed to be one solution'),
  more: count.describe('melts observed to be anything else'),
});

/** What melts of one's own make of the phase estimate. */
export const recalibrationSchema = z
  .object({
    kind: z.enum(['none', 'level', 'slope']).describe('none: too few melts; level: intercept alone'),
    counted: counts.describe('Melts with observed phases that the estimate has not learnt from'),
    missing: counts.describe('What still lacks for a recalibration'),
    fit: z
      .object({
        intercept: number,
        slope: number,
        covariance: z.tuple([number, number, number]).describe('Of intercept, of both, of slope'),
      })
      .nullable()
      .describe("On the logarithm of the odds: intercept + slope × the estimate's"),
  })
  .meta({ id: 'Recalibration' });

/** The phase estimate of an alloy, recalibrated on melts of one's own. */
export const ownPhaseSchema = z
  .object({
    singleSolution: number.nullable().describe('null: too few melts, or no basis for the estimate'),
    interval: z.tuple([number, number]).nullable().describe('95 %, of the recalibration alone'),
    recalibration: recalibrationSchema,
    basis: z.string().describe('What it was made from, or what is still missing'),
    words: z.string().describe('The number and its basis as sentences'),
  })
  .meta({ id: 'OwnPhaseEstimate' });
