import { effectivePool } from '@tiegel/contract/terms';
import { dataVersionOf, factsFor, formatComposition, symbols } from '@tiegel/elements';
import { publishedAlloys } from '@tiegel/elements/publishedAlloys';
import { quantities, screening } from '@tiegel/screening';
import { z } from 'zod';
import type { Parts, Server } from '../parts.ts';
import { problemAnswers } from '../problems/problemAnswers.ts';
import { quantitiesIn, quantityList } from './quantityList.ts';
import { searchParameters } from './searchParameters.ts';

const count = z.number().int();
const known = new Set(quantities.map(({ id }) => id));

const publishedSchema = z
  .object({
    quantities: z.array(z.string()).describe('As asked for'),
    items: z.array(
      z.object({
        formula: z.string().describe('As published; of an alloy that was brought in its name'),
        composition: z.record(z.string(), z.number()),
        inPool: z.boolean().describe('Made of elements of the pool of the search alone'),
        phases: z.string().nullable().describe('What most publications report'),
        references: count.describe('Publications'),
        doi: z.array(z.string()),
        own: z.boolean().describe('Brought in, rather than of the published alloys of the program'),
        values: z.array(z.number().nullable()).describe('In the order of `quantities`'),
      }),
    ),
    melts: z.array(
      z.object({
        id: z.string(),
        name: z.string(),
        composition: z.record(z.string(), z.number()).describe('at.%, as weighed'),
        phases: z.string().nullable().describe('As observed; null: not looked at'),
        values: z.array(z.number().nullable()),
      }),
    ),
    dataVersion: z.string().describe("Of the values: today's data, which may not be those of the search"),
  })
  .meta({ id: 'PublishedAlloys' });

/** GET /searches/:id/published: published alloys and own melts with computed values, at the conditions of a search. */
export function publishedRoute(app: Server, { searches, melts }: Parts): void {
  app.get(
    '/searches/:id/published',
    {
      schema: {
        summary:
          'Published alloys and own melts with computed values, to be laid over the candidates of a search',
        description:
          "Values are computed from today's data and prices at the conditions of the search. " +
          "Of figures of merit of one's own and late quantities there are none.",
        tags: ['candidates'],
        params: searchParameters,
        querystring: z.strictObject({ quantities: quantityList }),
        response: { 200: publishedSchema, ...problemAnswers(404) },
      },
    },
    (request) => {
      const { specification } = searches.view(request.params.id);
      const asked = quantitiesIn(request.query.quantities);
      const [prices, pairs] = [searches.prices(), searches.pairs()];
      const facts = factsFor(symbols, { prices, pairs });
      const valuesAt = screening(
        facts,
        asked.filter((id) => known.has(id)),
        specification.conditions,
      );
      const pool = new Set(effectivePool(specification.elements));
      const brought = searches.imports.alloys().map(({ name, composition, phases, doi }) => ({
        ...{ formula: name || formatComposition(composition), composition, phases, own: true },
        ...{ references: doi === null ? 0 : 1, doi: doi === null ? [] : [doi] },
      }));
      const published = publishedAlloys().map((alloy) => ({ ...alloy, own: false }));
      const items = [...published, ...brought].map(
        ({ formula, composition, phases, references, doi, own }) => {
          const values = valuesAt(composition);
          return {
            ...{ formula, composition, phases, references, own, doi: [...doi] },
            inPool: Object.keys(composition).every((symbol) => pool.has(symbol)),
            values: asked.map((id) => values[id] ?? null),
          };
        },
      );
      const melted = melts.list().map(({ id, name, composition, label }) => {
        const values = valuesAt(composition);
        return { id, name, composition, phases: label, values: asked.map((one) => values[one] ?? null) };
      });
      return { quantities: asked, items, melts: melted, dataVersion: dataVersionOf(prices, [], pairs) };
    },
  );
}
