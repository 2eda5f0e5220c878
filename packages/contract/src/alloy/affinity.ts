import { z } from 'zod';
import { statement } from './statement.ts';

/** Which pairs attract and repel each other, at one temperature. */
export const pairAffinitySchema = z.object({
  temperature: z.number().describe('K'),
  coordination: z.union([z.literal(8), z.literal(12)]).describe('Nearest neighbours of an atom, as assumed'),
  pairs: z
    .array(
      z.object({
        a: z.string(),
        b: z.string(),
        shortRangeOrder: z.number().describe('Warren–Cowley parameter: below 0 they seek each other'),
        weight: z.number().describe('Share of all bonds that would join this pair by chance'),
        limited: z.boolean().describe('Held at the edge of what is possible'),
      }),
    )
    .describe('The strongest effect on the alloy first'),
  validAbove: z.number().nullable().describe('K; the numbers mean nothing below. null: nowhere'),
  ...statement,
});
export type PairAffinity = z.infer<typeof pairAffinitySchema>;
