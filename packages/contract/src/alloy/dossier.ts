import { z } from 'zod';
import { compoundsSchema } from './compounds.ts';
import { demixingSchema, orderingSchema } from './demixing.ts';
import { neighbourSchema } from './neighbour.ts';
import { phaseSchema } from './phase.ts';
import { strengthSchema } from './strength.ts';

/** What is said of an alloy beyond its quantities. */
export const dossierSchema = z.object({
  criteria: z
    .record(z.string(), z.boolean().nullable())
    .describe('Verdicts by the id of the criterion; null: no value, or it speaks of other alloys'),
  phase: phaseSchema,
  demixing: demixingSchema.nullable(),
  ordering: orderingSchema.nullable(),
  compounds: compoundsSchema.nullable(),
  strength: strengthSchema,
  nearest: z.array(neighbourSchema),
});
