import { z } from 'zod';
import { phaseClasses } from './phaseClasses.ts';
import { statement } from './statement.ts';

const value = z.number().nullable();

/** The estimate of the phases of an alloy, as usually made. Probabilities of the classes add up to 1; null without a basis. */
export const phaseSchema = z
  .object({
    singleSolution: value.describe('Probability of one disordered fcc or bcc solution; null: no basis'),
    fcc: value,
    bcc: value,
    both: value,
    other: value,
    basis: z.enum(['ok', 'weak', 'none']),
    nearestDistance: z
      .number()
      .describe('Share of atoms that differ from the nearest alloy of the training data'),
    likely: z
      .array(z.enum(phaseClasses))
      .nullable()
      .describe('Classes that hold what is reported of 80 % of alloys'),
    ...statement,
  })
  .meta({ id: 'PhaseEstimate' });
export type PhaseEstimate = z.infer<typeof phaseSchema>;
