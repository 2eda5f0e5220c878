import type { CandidateQuery } from '@tiegel/contract';
import { columnOf } from './candidateColumns.ts';
import type { CandidateSet } from './candidateTable.ts';
import type { Connection } from './connections.ts';

export type Direction = CandidateQuery['direction'];

/**
 * A search of up to this many candidates is read whole and sorted in memory, in some 20 ms; a
 * larger one gets an index for each order that it is asked in. So a laboratory of many ordinary
 * searches never pays for indexes.
 */
export const READ_WHOLE = 20_000;

/**
 * The indexes of the table candidate. They hold all searches and stay; each has the search first,
 * so that one search's part lies together. Two for a quantity, one a direction, because equal
 * values stand in the order of rank both ways, which one index read backwards cannot give.
 */
export interface CandidateIndexes {
  /** Makes the index of this order where it is not there and the set is large. */
  require(set: CandidateSet, quantity: string, direction: Direction): void;
  requireComposition(set: CandidateSet): void;
  /** An index on the quantity in either direction; null where there is none. */
  on(quantity: string): string | null;
}

export function indexName(quantity: string, direction: Direction): string {
  return `candidate_${columnOf(quantity)}_${direction}`;
}

export function candidateIndexes(connection: Connection): CandidateIndexes {
  const there = connection.prepare("select 1 from sqlite_schema where type = 'index' and name = ?").pluck();
  const make = (name: string, columns: string) =>
    connection.exec(`create index if not exists ${name} on candidate (search, ${columns})`);
  return {
    require(set, quantity, direction) {
      if (set.kept <= READ_WHOLE) return;
      make(indexName(quantity, direction), `${columnOf(quantity)} ${direction}, rank`);
    },
    requireComposition(set) {
      if (set.kept > READ_WHOLE) make('candidate_composition', 'system, parts');
    },
    on: (quantity) =>
      [indexName(quantity, 'asc'), indexName(quantity, 'desc')].find((name) => there.get(name) === 1) ?? null,
  };
}
