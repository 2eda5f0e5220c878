import { z } from 'zod';
import { statement } from './statement.ts';

/** The random solution against the compounds and elements that it could fall apart into; energies in kJ/mol. */
export const compoundsSchema = z.object({
  hullDistance: z.number().describe('kJ/mol; below 0 the solution is the lower'),
  competing: z.array(z.object({ formula: z.string(), fraction: z.number() })),
  temperature: z.number().describe('K, of the anneal'),
  solutionFreeEnergy: z.number(),
  competingEnthalpy: z.number(),
  ...statement,
});
