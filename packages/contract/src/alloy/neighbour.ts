import { z } from 'zod';
import { amountsSchema } from './amounts.ts';

/** An alloy that somebody has made near another one: published, brought in, or melted in the laboratory. */
export const neighbourSchema = z.object({
  formula: z.string(),
  composition: amountsSchema,
  distance: z.number().describe('Share of atoms that differ'),
  phases: z.string().nullable().describe('What most publications report'),
  reports: z
    .array(z.object({ phases: z.string(), references: z.number().int() }))
    .describe('Every label, and how many publications report it'),
  publications: z
    .number()
    .int()
    .describe(
      'How many publications report phases; one that reports several labels counts once here, and for each of them in `reports`',
    )
    .exactOptional(),
  doi: z.array(z.string()),
  own: z.boolean().describe('Brought in or melted, rather than of the published alloys of the program'),
  import: z.number().int().nullable().describe('Number of the import that brought it'),
  melt: z.string().nullable().describe('Id of your melt; its composition is as weighed'),
  methods: z.array(z.string()).describe('How the phases of your melt were observed'),
});
export type Neighbour = z.infer<typeof neighbourSchema>;
