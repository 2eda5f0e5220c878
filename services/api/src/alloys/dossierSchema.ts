import { z } from 'zod';

const number = z.number();
const value = number.nullable();
const bySymbol = z.record(z.string(), number);
const words = z.string().describe('The same as a sentence');
const trust = z.string().describe('How far to trust it; belongs beside every number');

const strengthSchema = z
  .object({
    value: value.describe('MPa; null: no value, and the reason says why'),
    domain: z.enum(['inside', 'outside', 'lower bound']),
    error: value.describe('Median relative error to expect, 0.09 for 9 %; null: nobody measured it'),
    reason: z.string().nullable(),
  })
  .meta({ id: 'Strength' });

const reportSchema = z.object({ phases: z.string(), references: z.number().int() });

export const phaseSchema = z
  .object({
    singleSolution: value.describe('Probability of one disordered fcc or bcc solution; null: no basis'),
    fcc: value,
    bcc: value,
    both: value,
    other: value,
    basis: z.enum(['ok', 'weak', 'none']),
    nearestDistance: number.describe(
      'Share of atoms that differ from the nearest alloy of the training data',
    ),
    likely: z
      .array(z.enum(['fcc', 'bcc', 'both', 'other']))
      .nullable()
      .describe('Classes that hold what is reported of 80 % of alloys'),
    words,
    trust,
  })
  .meta({ id: 'PhaseEstimate' });

export const demixingSchema = z
  .object({
    temperature: value.describe('K; null: at no temperature'),
    ratioToMelting: value,
    mode: bySymbol.describe('What leaves what, of unit length'),
    words,
    trust,
  })
  .meta({ id: 'Demixing', description: 'An explanation, not a prediction of phases.' });

/** What is said of an alloy beyond its quantities. */
export const dossierFields = {
  criteria: z
    .record(z.string(), z.boolean().nullable())
    .describe('Verdicts by the id of the criterion; null: no value, or it speaks of other alloys'),
  phase: phaseSchema,
  demixing: demixingSchema.nullable(),
  ordering: z
    .object({
      temperature: value.describe('K; null: at no temperature'),
      ratioToMelting: value,
      sublattices: z.array(z.array(z.string())),
      mode: bySymbol,
      words,
      trust,
    })
    .nullable(),
  compounds: z
    .object({
      hullDistance: number.describe('kJ/mol; below 0 the solution is the lower'),
      competing: z.array(z.object({ formula: z.string(), fraction: number })),
      temperature: number.describe('K, of the anneal'),
      solutionFreeEnergy: number,
      competingEnthalpy: number,
      words,
      trust,
    })
    .nullable(),
  strength: z.object({
    temperature: number.describe('K, of the service'),
    fcc: strengthSchema,
    bcc: strengthSchema,
  }),
  nearest: z.array(
    z.object({
      formula: z.string(),
      composition: bySymbol,
      distance: number.describe('Share of atoms that differ'),
      phases: z.string().nullable().describe('What most publications report'),
      reports: z.array(reportSchema).describe('Every label, and how many publications report it'),
      doi: z.array(z.string()),
      own: z.boolean().describe('Brought in or melted, rather than of the published alloys of the program'),
      import: z.number().int().nullable().describe('Number of the import that brought it'),
      melt: z.string().nullable().describe('Id of your melt; its composition is as weighed'),
      methods: z.array(z.string()).describe('How the phases of your melt were observed'),
    }),
  ),
};
