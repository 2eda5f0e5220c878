import type { CandidateQuery } from '@tiegel/contract';
import { columnOf } from './candidateColumns.ts';
import { indexName } from './candidateIndexes.ts';
import { both, type Condition, condition, rangeOf } from './condition.ts';
import type { Place } from './pageKey.ts';

/** A stretch of a query's order that is one range of one index, read forwards or backwards. */
export interface Stretch {
  index: string;
  where: Condition;
  orderBy: string;
}

/**
 * A query's order as stretches to be read one after another, from behind a place (null: from the
 * start). By a quantity these are: the rest of the rows with the place's own value, the values
 * beyond it, the rows without a value. Each is a plain range of an index; the order as a whole,
 * with missing values last both ways, is not.
 */
export function stretches(query: CandidateQuery, place: Place | null): Stretch[] {
  if (query.order === 'rank') return [byRank(query, place)];
  const column = columnOf(query.order);
  const ranges = rangeOf(query, query.order);
  const index = indexName(query.order, query.direction);
  const missing = { index, where: condition(`${column} is null`), orderBy: 'rank' };
  if (place !== null && place.value === null) {
    return [{ ...missing, where: condition(`${column} is null and rank > ?`, place.rank) }];
  }
  const ties = place && condition(`${column} = ? and rank > ?`, place.value!, place.rank);
  const beyond = {
    index,
    where: both(beyondValue(query, place?.value ?? null), ranges),
    orderBy: `${column} ${query.direction}, rank`,
  };
  return [
    ...(ties ? [{ index, where: both(ties, ranges), orderBy: 'rank' }] : []),
    beyond,
    // A row without a value lies in no range.
    ...(ranges.values.length === 0 ? [missing] : []),
  ];
}

function byRank(query: CandidateQuery, place: Place | null): Stretch {
  const ascending = query.direction === 'asc';
  const start = place?.rank ?? (ascending ? 0 : Number.MAX_SAFE_INTEGER);
  return {
    index: 'candidate_rank',
    where: condition(`rank ${ascending ? '>' : '<'} ?`, start),
    orderBy: `rank ${query.direction}`,
  };
}

/** The values behind one; behind nothing, all values. Stated by an infinity, because SQLite seeks no index for `is not null`. */
function beyondValue(query: CandidateQuery, value: number | null): Condition {
  const ascending = query.direction === 'asc';
  const start = value ?? (ascending ? Number.NEGATIVE_INFINITY : Number.POSITIVE_INFINITY);
  return condition(`${columnOf(query.order)} ${ascending ? '>' : '<'} ?`, start);
}

/** The whole order as one clause, for rows that are sorted rather than read from an index. */
export function sortedBy(query: CandidateQuery): string {
  if (query.order === 'rank') return `rank ${query.direction}`;
  return `${columnOf(query.order)} ${query.direction} nulls last, rank`;
}

/** Every row behind a place of the query's order. */
export function behind(query: CandidateQuery, place: Place): Condition {
  const conditions = stretches({ ...query, ranges: [] }, place).map((one) => one.where);
  return {
    sql: conditions.map((one) => `(${one.sql})`).join(' or '),
    values: conditions.flatMap((one) => one.values),
  };
}

/** What a key says of a row: its value in the order and its rank. */
export function placeColumns(query: CandidateQuery): string {
  return `${query.order === 'rank' ? 'null' : columnOf(query.order)} as value, rank`;
}
