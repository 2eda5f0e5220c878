import type { CandidateQuery } from '@tiegel/contract';
import type { CandidateSet, CandidateSource } from './candidateSource.ts';
import { type Condition, condition } from './condition.ts';
import type { Place } from './pageKey.ts';
import { atPlaces, type Places, placeBehind, placesInRange } from './places.ts';

/**
 * A search's candidates in a query's order as numbered positions, which an index leads to, so that
 * any stretch of them is read without reading what lies before.
 */
export interface CandidateLine extends Places {
  /** Stretch of the line, as what stands behind `from` in a select, and its order. */
  stretch(places: Places): Condition & { orderBy: string };
  /** The position behind a row. */
  behind(row: Place): number;
}

/** The line of a query; positions outside its ranges on the ordered quantity are left out. */
export function candidateLine(
  source: CandidateSource,
  set: CandidateSet,
  query: CandidateQuery,
): CandidateLine {
  return query.order === 'rank' ? byRank(set, query) : byQuantity(source, set, query);
}

/** Ranks run from 1 without gaps, so they are positions by themselves. */
function byRank({ search, kept }: CandidateSet, { direction }: CandidateQuery): CandidateLine {
  const ascending = direction === 'asc';
  const orderBy = `rank ${direction}`;
  const where = 'candidate indexed by candidate_rank where search = ? and rank between ? and ?';
  return {
    ...{ low: 0, high: kept },
    stretch({ low, high }) {
      const [first, last] = ascending ? [low + 1, high] : [kept - high + 1, kept - low];
      return { ...condition(where, search, first, last), orderBy };
    },
    behind: ({ rank }) => (ascending ? rank : kept - rank + 1),
  };
}

function byQuantity(source: CandidateSource, set: CandidateSet, query: CandidateQuery): CandidateLine {
  const { connection } = source;
  const { order: quantity, direction } = query;
  const ordering = source.orderings.byQuantity(set.search, quantity, direction);
  return {
    ...placesInRange(connection, set, ordering, query, quantity),
    stretch: (places) => ({ ...atPlaces(set, ordering, places), orderBy: 'place.place' }),
    behind: (row) => placeBehind(connection, set, ordering, quantity, row),
  };
}
