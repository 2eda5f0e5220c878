import { systemsSchema } from '@tiegel/contract';
import { systemsAsked, systemView } from '@tiegel/search/laboratory';
import { z } from 'zod';
import type { Parts, Server } from '../parts.ts';
import { problemAnswers } from '../problems/problemAnswers.ts';
import { candidateQuery, systemsSelectionSchema } from './candidateQuery.ts';
import { moreOf, takeMore } from './moreSelection.ts';
import { numberInAddress } from './numberInAddress.ts';
import { searchParameters } from './searchParameters.ts';

const usualPage = 100;
const greatestPage = 1000;

/** GET /searches/:id/systems: the best kept candidate of each system, and which systems have no published alloy in the table. */
export function systemRoute(app: Server, { searches, melts }: Parts): void {
  app.get(
    '/searches/:id/systems',
    {
      preValidation: takeMore(searches),
      schema: {
        summary: 'The systems of the kept candidates by their best, with what is published of each',
        description:
          'A system is a set of elements. With explored=no these are those of which neither a published alloy, nor one that ' +
          'was brought in, nor a melt recorded here is known.',
        tags: ['candidates'],
        params: searchParameters,
        querystring: systemsSelectionSchema.extend({
          limit: numberInAddress(z.int().min(1).max(greatestPage))
            .optional()
            .describe(`Write a whole number of systems from 1 to ${greatestPage}; ${usualPage} if left out.`),
          at: numberInAddress(z.int().min(0))
            .optional()
            .describe('Write the number of the first system, from 0, in the order of their best.'),
        }),
        response: { 200: systemsSchema, ...problemAnswers(404, 409) },
      },
    },
    async (request) => {
      const { id } = request.params;
      const { explored, limit = usualPage, at = 0, ...selection } = request.query;
      const query = candidateQuery(selection, moreOf(request));
      const laboratory = { melts: melts.list(), own: searches.imports.alloys() };
      const { systems, ...rest } = await systemsAsked(searches, { id, query, explored }, laboratory);
      return {
        items: systems.slice(at, at + limit).map((one) => systemView(searches, id, one)),
        next: at + limit < systems.length ? at + limit : null,
        ...rest,
      };
    },
  );
}
