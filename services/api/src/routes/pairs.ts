import { ownPairOf, pairColumns, pairRecords } from '@tiegel/elements';
import { z } from 'zod';
import type { Parts, Server } from '../parts.ts';
import { problemAnswers } from '../problems/problemAnswers.ts';

const [{ meaning, unit }] = pairColumns;
const pairSchema = z
  .object({
    a: z.string(),
    b: z.string(),
    mixingEnthalpy: z.number().describe(`${meaning} Unit: ${unit}.`),
    source: z
      .string()
      .nullable()
      .describe('Where a value of your own is from; null: the table of the program'),
    import: z.int().nullable().describe('Number of the import that brought a value of your own'),
    importName: z.string().nullable().describe('What that import is called'),
    importedAt: z.string().nullable().describe('UTC, ISO 8601'),
  })
  .meta({ id: 'Pair' });

/** GET /pairs: the pair enthalpies in force, each pair once. */
export function pairRoute(app: Server, { searches }: Parts): void {
  app.get(
    '/pairs',
    {
      schema: {
        summary: 'Enthalpies of mixing of element pairs, those of your own in the place of the others',
        tags: ['data'],
        response: { 200: z.array(pairSchema), ...problemAnswers() },
      },
    },
    () => {
      const ownOf = ownPairOf(searches.imports.pairs());
      return pairRecords(searches.pairs()).map((pair) => {
        const own = ownOf(pair.a, pair.b);
        const { source = null, import: number = null, importName = null, importedAt = null } = own ?? {};
        return { ...pair, source, import: number, importName, importedAt };
      });
    },
  );
}
