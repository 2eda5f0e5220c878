import {
  candidateValuesSchema,
  elementUseSchema,
  searchDistributionsSchema,
  tradeOffSchema,
} from '@tiegel/contract';
import { quantitiesToShow } from '@tiegel/search';
import { z } from 'zod';
import type { Parts, Server } from '../parts.ts';
import { problemAnswers } from '../problems/problemAnswers.ts';
import { candidateQuery, selectionSchema } from './candidateQuery.ts';
import { moreOf, takeMore } from './moreSelection.ts';
import { numberInAddress } from './numberInAddress.ts';
import { quantitiesIn, quantityList } from './quantityList.ts';
import { searchParameters } from './searchParameters.ts';

const tags = ['candidates'];
const usualValues = 20_000;
const mostValues = 200_000;
const filters = selectionSchema.omit({ order: true, direction: true });
const wish = z.enum(['low', 'high']);

/** Views of all kept candidates of a search at once: columns of values, elements, and the front of two quantities. */
export function candidateViewRoutes(app: Server, { searches }: Parts): void {
  app.get(
    '/searches/:id/values',
    {
      preValidation: takeMore(searches),
      // As on the pages of candidates: to check 1.6 million numbers of their own type kept everybody waiting for 0.4 s.
      serializerCompiler: () => JSON.stringify,
      schema: {
        summary: 'Values of the kept candidates as columns, for plots',
        description:
          'By rank, with the same filters as the pages of candidates. Where more candidates meet them than `limit`, ' +
          'every n-th rank is told, and all of the 200 best; `every` and `meeting` say so.',
        tags,
        params: searchParameters,
        querystring: filters.extend({
          quantities: quantityList.optional(),
          limit: numberInAddress(z.int().min(1).max(mostValues))
            .optional()
            .describe(
              `Write how many candidates at most, from 1 to ${mostValues}; ${usualValues} if left out.`,
            ),
        }),
        response: { 200: candidateValuesSchema, ...problemAnswers(404, 409) },
      },
    },
    (request) => {
      const { quantities, limit = usualValues, ...selection } = request.query;
      const query = candidateQuery(selection, moreOf(request));
      return searches.values(request.params.id, query, quantitiesIn(quantities), limit);
    },
  );

  app.get(
    '/searches/:id/distributions',
    {
      preValidation: takeMore(searches),
      schema: {
        summary: 'How quantities lie over the grid, over what passes, and over what was kept',
        description:
          'The grid and what passes are a sample of 20,000 points (all points of a smaller grid), on the data that ' +
          'the search was planned with; the kept ones are all that meet the filters.',
        tags,
        params: searchParameters,
        querystring: filters.extend({
          quantities: quantityList
            .optional()
            .describe('Write ids with commas between; left out, the first 8 that are ranked and limited.'),
        }),
        response: { 200: searchDistributionsSchema, ...problemAnswers(404, 409) },
      },
    },
    (request) => {
      const { id } = request.params;
      const { quantities, ...selection } = request.query;
      const query = candidateQuery(selection, moreOf(request));
      const asked = quantities === undefined ? quantitiesToShow(searches.view(id)) : quantitiesIn(quantities);
      return searches.searchDistributions(id, query, asked);
    },
  );

  app.get(
    '/searches/:id/element-use',
    {
      preValidation: takeMore(searches),
      schema: {
        summary: 'In how many kept candidates each element is, and in which amounts',
        tags,
        params: searchParameters,
        querystring: filters,
        response: { 200: elementUseSchema, ...problemAnswers(404, 409) },
      },
    },
    (request) => searches.elementUse(request.params.id, candidateQuery(request.query, moreOf(request))),
  );

  app.get(
    '/searches/:id/trade-off',
    {
      preValidation: takeMore(searches),
      schema: {
        summary: 'The Pareto front of two quantities among the kept candidates',
        description:
          'Those that no other kept candidate beats in one quantity without losing in the other. It is the front ' +
          'of what was kept, not of all that passed.',
        tags,
        params: searchParameters,
        querystring: filters.extend({
          first: z.string().max(64).describe('Write the id of a quantity.'),
          second: z.string().max(64).describe('Write the id of another quantity.'),
          preferFirst: wish.describe('Write low or high: which values of the first are better.'),
          preferSecond: wish.describe('Write low or high: which values of the second are better.'),
        }),
        response: { 200: tradeOffSchema, ...problemAnswers(404, 409) },
      },
    },
    (request) => {
      const { first, second, preferFirst, preferSecond, ...selection } = request.query;
      const query = candidateQuery(selection, moreOf(request));
      return searches.tradeOff(request.params.id, query, [first, second], [preferFirst, preferSecond]);
    },
  );
}
