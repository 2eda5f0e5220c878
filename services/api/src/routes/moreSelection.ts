import { type CandidateQuery, type Fault, faultsOf, ProblemError } from '@tiegel/contract';
import type { Searches } from '@tiegel/search';
import type { FastifyRequest } from 'fastify';
import { z } from 'zod';
import { numberInAddress } from './numberInAddress.ts';

/** What is asked of quantities that only one search has: late ones, and figures of merit of one's own. */
export interface MoreSelection {
  ranges: CandidateQuery['ranges'];
  order: string | null;
}

const number = numberInAddress(z.number()).optional().describe('Write a number.');
const taken = new WeakMap<object, MoreSelection>();

/**
 * A hook before the check of a request: takes ranges and order by the quantities that the search
 * alone has out of the query string, whose schema cannot name them; all else is left to the
 * schema, with its near misses. Throws request/wrong-value.
 */
export function takeMore(searches: Searches) {
  return async (request: FastifyRequest): Promise<void> => {
    const { id } = request.params as { id: string };
    const query = request.query as Record<string, unknown>;
    const ids = moreIds(searches, id);
    const faults: Fault[] = [];
    const edge = (name: string): number | undefined => {
      const sent = { [name]: query[name] };
      const schema = z.object({ [name]: number });
      delete query[name];
      const { success, data } = schema.safeParse(sent);
      if (!success) faults.push(...faultsOf(schema, sent));
      return data?.[name];
    };
    const ranges = ids.flatMap((quantity) => {
      const [min, max] = [edge(`min.${quantity}`), edge(`max.${quantity}`)];
      if (min === undefined && max === undefined) return [];
      return [{ quantity, ...(min === undefined ? {} : { min }), ...(max === undefined ? {} : { max }) }];
    });
    const order = ids.find((one) => one === query.order) ?? null;
    if (order !== null) delete query.order;
    if (faults.length > 0) throw new ProblemError(faults);
    taken.set(request, { ranges, order });
  };
}

/** None of a search that is not there: what is wrong with the question itself is told first. */
function moreIds(searches: Searches, id: string): string[] {
  try {
    return searches.view(id).moreQuantities.map((quantity) => quantity.id);
  } catch (error) {
    if (error instanceof ProblemError && error.faults[0]?.code === 'search/unknown') return [];
    throw error;
  }
}

/** What the hook took of a request. */
export function moreOf(request: object): MoreSelection {
  return taken.get(request) ?? { ranges: [], order: null };
}
