import { z } from 'zod';

const ofOneSolution = z
  .object({
    value: z.number().nullable().describe('MPa; null: no value, and the reason says why'),
    domain: z.enum(['inside', 'outside', 'lower bound']),
    error: z
      .number()
      .nullable()
      .describe('Median relative error to expect, 0.09 for 9 %; null: nobody measured it'),
    reason: z.string().nullable(),
  })
  .meta({ id: 'Strength' });

/** The strengths of an alloy as one fcc and as one bcc solution. */
export const strengthSchema = z.object({
  temperature: z.number().describe('K, of the service'),
  fcc: ofOneSolution,
  bcc: ofOneSolution,
});
