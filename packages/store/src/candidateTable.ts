import type { Candidate, CandidatePage, CandidateQuery } from '@tiegel/contract';
import { addColumns, columnOf } from './candidateColumns.ts';
import { candidatePage } from './candidatePage.ts';
import { readCandidate, type StoredCandidate } from './candidateRow.ts';
import type { CandidateSet } from './candidateSource.ts';
import { candidateStream } from './candidateStream.ts';
import {
  type CandidateColumns,
  type ColumnsAsked,
  candidateCounts,
  candidateValues,
} from './candidateValues.ts';
import type { Connections } from './connections.ts';
import { orderings } from './orderings.ts';
import { rankOfComposition } from './places.ts';

/**
 * A search of up to this many candidates is read whole and sorted in memory, in some 20 ms; a
 * larger one gets each order that it is asked in as rows of its own. So a laboratory of many
 * ordinary searches never pays for them.
 */
const READ_WHOLE = 20_000;

/** A kept grid point on its way into the store. Ranks run from 1 without gaps; `parts` are integers of the grid, one for each symbol. */
export interface NewCandidate {
  rank: number;
  symbols: readonly string[];
  parts: readonly number[];
  score: number | null;
  quantities: Readonly<Record<string, number | null>>;
}

export interface CandidateTable {
  /** Adds a batch, in one transaction. A number that is not finite is refused: SQLite would keep it as missing. */
  insert(search: number, batch: readonly NewCandidate[]): void;
  /** Takes away a search's orders and up to `limit` of its candidates, the best first; returns how many. */
  clear(search: number, limit: number): number;
  /** Makes the order of a quantity ready, rising, where the search is large enough to need it; others are made when first asked for. */
  order(set: CandidateSet, quantity: string): void;
  /** A page in the query's order. Throws request/invalid for a key that is not one of this order. */
  page(set: CandidateSet, query: CandidateQuery): Pick<CandidatePage, 'items' | 'next'>;
  /** The candidate of exactly these parts, null where none was kept. */
  find(set: CandidateSet, symbols: readonly string[], parts: readonly number[]): Candidate | null;
  /** All that the query selects, in its order (its limit, key and row number do not count), read as they are asked for. */
  stream(set: CandidateSet, query: CandidateQuery): Generator<Candidate>;
  /** Columns of those that meet the query's filters, by rank, stretch by stretch: others can be answered in between. */
  values(set: CandidateSet, query: CandidateQuery, asked: ColumnsAsked): Generator<CandidateColumns>;
  /** How many meet the query's filters: numbers to be added up, stretch by stretch. */
  counts(set: CandidateSet, query: CandidateQuery): Generator<number>;
}

export function candidateTable(
  connections: Connections,
  columns: readonly string[],
  readWhole: number = READ_WHOLE,
): CandidateTable {
  const { main } = connections;
  addColumns(main, columns);
  const names = columns.map(columnOf);
  const insert = main.prepare(
    `insert into candidate (search, rank, system, parts, score${names.map((name) => `, ${name}`).join('')})
     values (?, ?, ?, ?, ?${', ?'.repeat(names.length)})`,
  );
  const clear = main.prepare(
    `delete from candidate where search = ? and rank in
       (select rank from candidate indexed by candidate_rank where search = ? order by rank limit ?)`,
  );
  const clearPlaces = main.prepare(
    'delete from candidate_place where ordering in (select number from candidate_order where search = ?)',
  );
  const clearOrders = main.prepare('delete from candidate_order where search = ?');
  const find = main.prepare('select * from candidate where search = ? and system = ? and parts = ?');
  const at = main.prepare('select * from candidate where search = ? and rank = ?');
  const source = { connection: main, orderings: orderings(main), readWhole };

  const insertAll = main.transaction((search: number, batch: readonly NewCandidate[]) => {
    for (const one of batch) {
      const values = columns.map((id) => finite(one.quantities[id] ?? null, id));
      const score = finite(one.score, 'score');
      insert.run(search, one.rank, one.symbols.join(' '), one.parts.join(' '), score, ...values);
    }
  });

  const clearSome = main.transaction((search: number, limit: number) => {
    clearPlaces.run(search);
    clearOrders.run(search);
    return clear.run(search, search, limit).changes;
  });

  function findInOrder(set: CandidateSet, sought: { system: string; parts: string }): unknown {
    const rank = rankOfComposition(main, set, source.orderings.byComposition(set.search), sought);
    return rank === null ? undefined : at.get(set.search, rank);
  }

  return {
    insert: (search, batch) => insertAll.immediate(search, batch),
    clear: (search, limit) => clearSome.immediate(search, limit),
    order(set, quantity) {
      if (set.kept > readWhole) source.orderings.byQuantity(set.search, quantity, 'asc');
    },
    page: (set, query) => candidatePage(source, set, query),
    find(set, symbols, parts) {
      const sought = { system: symbols.join(' '), parts: parts.join(' ') };
      const row =
        set.kept > readWhole ? findInOrder(set, sought) : find.get(set.search, sought.system, sought.parts);
      return row === undefined ? null : readCandidate(row as StoredCandidate, set.columns);
    },
    stream: (set, query) => candidateStream(connections, source, set, query),
    values: (set, query, asked) => candidateValues(source, set, query, asked),
    counts: (set, query) => candidateCounts(source, set, query),
  };
}

function finite(value: number | null, what: string): number | null {
  if (value !== null && !Number.isFinite(value)) throw new RangeError(`${what} is ${value}`);
  return value;
}
