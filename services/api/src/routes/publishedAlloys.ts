import { knownAlloysSchema, ProblemError } from '@tiegel/contract';
import { symbolFault } from '@tiegel/elements';
import { alloyOrders, knownAlloys, orderAlloys } from '@tiegel/search';
import { z } from 'zod';
import type { Parts, Server } from '../parts.ts';
import { problemAnswers } from '../problems/problemAnswers.ts';
import { elementList, symbolsIn } from './candidateQuery.ts';
import { numberInAddress } from './numberInAddress.ts';

const usualPage = 100;
const greatestPage = 1000;

const querySchema = z.strictObject({
  text: z
    .string()
    .max(200)
    .optional()
    .describe('Write what stands in name, process, note, doi or composition.'),
  has: elementList('elements that must be there'),
  without: elementList('elements that must not'),
  phase: z.string().max(40).optional().describe('Write a phase that was observed, for example B2.'),
  own: z
    .enum(['yes', 'no'])
    .optional()
    .describe('Write yes for those that were brought in, no for the others.'),
  order: z
    .enum(alloyOrders)
    .optional()
    .describe('Write what the alloys are put in order by; left out, own ones come first.'),
  direction: z.enum(['asc', 'desc']).optional().describe('Write asc (the default) or desc.'),
  limit: numberInAddress(z.int().min(1).max(greatestPage))
    .optional()
    .describe(`Write a whole number of alloys from 1 to ${greatestPage}; ${usualPage} if left out.`),
  at: numberInAddress(z.int().min(0)).optional().describe('Write the number of the first alloy, from 0.'),
});

/** GET /published-alloys: alloys that somebody has made, as far as the data know, own ones first unless another order is asked for. */
export function publishedAlloyRoute(app: Server, { searches }: Parts): void {
  app.get(
    '/published-alloys',
    {
      schema: {
        summary: 'Published alloys and those that were brought in, searched',
        tags: ['data'],
        querystring: querySchema,
        response: { 200: knownAlloysSchema, ...problemAnswers() },
      },
    },
    (request) => {
      const { text, phase, own, order, direction = 'asc', limit = usualPage, at = 0 } = request.query;
      const [has, without] = [symbolsIn(request.query.has), symbolsIn(request.query.without)];
      const faults = [
        ...has.flatMap((symbol) => symbolFault(symbol, '/has') ?? []),
        ...without.flatMap((symbol) => symbolFault(symbol, '/without') ?? []),
      ];
      if (faults.length > 0) throw new ProblemError(faults);
      const wanted = { text, has, without, phase, own: own === undefined ? undefined : own === 'yes' };
      const known = knownAlloys(searches.imports.alloys(), wanted);
      const found = order === undefined ? known : orderAlloys(known, order, direction);
      return { total: found.length, items: found.slice(at, at + limit) };
    },
  );
}
