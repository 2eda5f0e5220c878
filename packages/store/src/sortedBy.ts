import type { CandidateQuery } from '@tiegel/contract';
import { columnOf } from './candidateColumns.ts';
import { type Condition, condition } from './condition.ts';
import type { Place } from './pageKey.ts';

type Order = Pick<CandidateQuery, 'order' | 'direction'>;

/** How candidates are sorted: missing values last in both directions, equal ones by rank. */
export function sortedBy({ order, direction }: Order): string {
  return order === 'rank'
    ? `candidate.rank ${direction}`
    : `${columnOf(order)} ${direction} nulls last, candidate.rank`;
}

/** Every candidate that stands behind a place of the order. */
export function behind({ order, direction }: Order, { value, rank }: Place): Condition {
  const beyond = direction === 'asc' ? '>' : '<';
  if (order === 'rank') return condition(`candidate.rank ${beyond} ?`, rank);
  const column = columnOf(order);
  if (value === null) return condition(`${column} is null and candidate.rank > ?`, rank);
  const sql = `${column} ${beyond} ? or (${column} = ? and candidate.rank > ?) or ${column} is null`;
  return condition(sql, value, value, rank);
}
