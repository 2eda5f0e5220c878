import { pairSchema } from '@tiegel/contract';
import { ownPairOf, pairColumns, pairRecords } from '@tiegel/elements';
import { z } from 'zod';
import type { Parts, Server } from '../parts.ts';
import { problemAnswers } from '../problems/problemAnswers.ts';

const [{ meaning, unit }] = pairColumns;
const toldSchema = pairSchema
  .extend({ mixingEnthalpy: pairSchema.shape.mixingEnthalpy.describe(`${meaning} Unit: ${unit}.`) })
  .meta({ id: 'Pair' });

/** GET /pairs: the pair enthalpies in force, each pair once. */
export function pairRoute(app: Server, { searches }: Parts): void {
  app.get(
    '/pairs',
    {
      schema: {
        summary: 'Enthalpies of mixing of element pairs, those of your own in the place of the others',
        tags: ['data'],
        response: { 200: z.array(toldSchema), ...problemAnswers() },
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
