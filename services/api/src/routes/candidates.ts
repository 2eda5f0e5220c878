import { candidatePageSchema, candidateSchema, ordersSchema } from '@tiegel/contract';
import { z } from 'zod';
import type { Parts, Server } from '../parts.ts';
import { problemAnswers } from '../problems/problemAnswers.ts';
import { candidateQuery, pageSchema } from './candidateQuery.ts';
import { moreOf, takeMore } from './moreSelection.ts';
import { searchParameters } from './searchParameters.ts';

const tags = ['candidates'];

/** GET /searches/:id/candidates, a page of the kept candidates, and one of them by its composition. */
export function candidateRoutes(app: Server, { searches }: Parts): void {
  app.get(
    '/searches/:id/candidates',
    {
      preValidation: takeMore(searches),
      // Its thousands of numbers are of the type that the schema states; to check each took longer than to find them.
      serializerCompiler: () => JSON.stringify,
      schema: {
        summary: 'A page of the kept candidates, filtered and ordered',
        description:
          'Filters act among the kept candidates, not among all that passed; `among` says how many those are. ' +
          'min.QUANTITY, max.QUANTITY and order also take the quantities that the search alone has (its moreQuantities).',
        tags,
        params: searchParameters,
        querystring: pageSchema,
        response: { 200: candidatePageSchema, ...problemAnswers(404, 409) },
      },
    },
    async (request) => {
      const query = candidateQuery(request.query, moreOf(request));
      await searches.ready(request.params.id, query);
      return searches.candidates(request.params.id, query);
    },
  );

  app.get(
    '/searches/:id/orders',
    {
      schema: {
        summary: 'Orders of the kept candidates that are being made at the moment',
        description:
          'An order that nobody asked for yet is made before its first page is answered: seconds for 10⁶ candidates. ' +
          'An order that is not listed is made, or was not asked for.',
        tags,
        params: searchParameters,
        response: { 200: ordersSchema, ...problemAnswers(404) },
      },
    },
    (request) => searches.ordersInMaking(request.params.id),
  );

  app.get(
    '/searches/:id/candidates/:composition',
    {
      schema: {
        summary: 'One kept candidate by its composition',
        tags,
        params: searchParameters.extend({
          composition: z
            .string()
            .max(300)
            .describe(
              'The canonical composition in at.%, symbols alphabetical, for example Al5Co20Cr25Fe25Ni25.',
            ),
        }),
        response: { 200: candidateSchema, ...problemAnswers(404, 409) },
      },
    },
    (request) => searches.candidate(request.params.id, request.params.composition),
  );
}
