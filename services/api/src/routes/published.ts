import { publishedOverSchema } from '@tiegel/contract';
import { effectivePool } from '@tiegel/contract/terms';
import { dataVersionOf, factsFor, formatComposition, symbols } from '@tiegel/elements';
import { publishedAlloys } from '@tiegel/elements/publishedAlloys';
import { type Composition, quantities, screening } from '@tiegel/screening';
import { z } from 'zod';
import type { Parts, Server } from '../parts.ts';
import { problemAnswers } from '../problems/problemAnswers.ts';
import { quantitiesIn, quantityList } from './quantityList.ts';
import { searchParameters } from './searchParameters.ts';

const known = new Set(quantities.map(({ id }) => id));

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
        response: { 200: publishedOverSchema, ...problemAnswers(404) },
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
      // A name that every object inherits, such as "constructor", is no quantity.
      const askedOf = (composition: Composition) => {
        const values = valuesAt(composition);
        return asked.map((id) => (known.has(id) ? (values[id] ?? null) : null));
      };
      const pool = new Set(effectivePool(specification.elements));
      const brought = searches.imports.alloys().map(({ name, composition, phases, doi }) => ({
        ...{ formula: name || formatComposition(composition), composition, phases, own: true },
        ...{ references: doi === null ? 0 : 1, doi: doi === null ? [] : [doi] },
      }));
      const published = publishedAlloys().map((alloy) => ({ ...alloy, own: false }));
      const items = [...published, ...brought].map(
        ({ formula, composition, phases, references, doi, own }) => {
          return {
            ...{ formula, composition, phases, references, own, doi: [...doi] },
            inPool: Object.keys(composition).every((symbol) => pool.has(symbol)),
            values: askedOf(composition),
          };
        },
      );
      const melted = melts.list().map(({ id, name, composition, label }) => {
        return { id, name, composition, phases: label, values: askedOf(composition) };
      });
      return { quantities: asked, items, melts: melted, dataVersion: dataVersionOf(prices, [], pairs) };
    },
  );
}
