import { z } from 'zod';

/** The mixing enthalpy of a pair of elements that is in force. */
export const pairSchema = z.object({
  a: z.string(),
  b: z.string(),
  mixingEnthalpy: z.number(),
  source: z.string().nullable().describe('Where a value of your own is from; null: the table of the program'),
  import: z.int().nullable().describe('Number of the import that brought a value of your own'),
  importName: z.string().nullable().describe('What that import is called'),
  importedAt: z.string().nullable().describe('UTC, ISO 8601'),
});
export type PairView = z.infer<typeof pairSchema>;
