import { pairColumns, pairRecords } from '@tiegel/elements';
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
      const own = new Map(searches.imports.pairs().map((pair) => [keyOf(pair), pair]));
      return pairRecords(searches.pairs()).map((pair) => {
        const { source = null, import: number = null } = own.get(keyOf(pair)) ?? {};
        return { ...pair, source, import: number };
      });
    },
  );
}

const keyOf = ({ a, b }: { a: string; b: string }): string => [a, b].sort().join('-');
