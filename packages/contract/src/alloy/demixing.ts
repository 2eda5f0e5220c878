import { z } from 'zod';
import { amountsSchema } from './amounts.ts';
import { statement } from './statement.ts';

const temperature = z.number().nullable().describe('K; null: at no temperature');
const ratioToMelting = z.number().nullable();

/** Below which temperature a random solution would begin to separate, and how. */
export const demixingSchema = z
  .object({
    temperature,
    ratioToMelting,
    mode: amountsSchema.describe('What leaves what, of unit length'),
    ...statement,
  })
  .meta({ id: 'Demixing', description: 'An explanation, not a prediction of phases.' });

/** The same of order on a bcc lattice, which is separation into two sublattices. */
export const orderingSchema = z.object({
  temperature,
  ratioToMelting,
  sublattices: z.array(z.array(z.string())),
  mode: amountsSchema,
  ...statement,
});
