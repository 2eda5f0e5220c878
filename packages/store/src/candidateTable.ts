import type { Candidate, CandidatePage, CandidateQuery } from '@tiegel/contract';
import { addColumns, columnOf } from './candidateColumns.ts';
import { candidateIndexes } from './candidateIndexes.ts';
import { candidatePage } from './candidatePage.ts';
import { readCandidate, type StoredCandidate } from './candidateRow.ts';
import { candidateStream } from './candidateStream.ts';
import type { Connections } from './connections.ts';

/** A kept grid point on its way into the store: `parts` are integers of the grid, one for each symbol. */
export interface NewCandidate {
  rank: number;
  symbols: readonly string[];
  parts: readonly number[];
  score: number | null;
  quantities: Readonly<Record<string, number | null>>;
}

/** Whose candidates are meant: the search's number, how many it kept, and the ids of its quantities. */
export interface CandidateSet {
  search: number;
  kept: number;
  columns: readonly string[];
}

export interface CandidateTable {
  /** Adds a batch, in one transaction. A number that is not finite is refused: SQLite would keep it as missing. */
  insert(search: number, batch: readonly NewCandidate[]): void;
  /** Takes away up to `limit` candidates of a search; returns how many. */
  clear(search: number, limit: number): number;
  /** Makes the index by which pages in the order of a quantity come, where the search is large enough to need one. */
  index(set: CandidateSet, quantity: string): void;
  /** A page in the query's order. Throws request/invalid for a key that is not one of this order. */
  page(set: CandidateSet, query: CandidateQuery): Pick<CandidatePage, 'items' | 'next'>;
  /** The candidate of exactly these parts, null where none was kept. */
  find(set: CandidateSet, symbols: readonly string[], parts: readonly number[]): Candidate | null;
  /** All that the query selects, in its order (its limit, key and row number do not count), read as they are asked for. */
  stream(set: CandidateSet, query: CandidateQuery): Generator<Candidate>;
}

export function candidateTable(connections: Connections, columns: readonly string[]): CandidateTable {
  const { main } = connections;
  addColumns(main, columns);
  const names = columns.map(columnOf);
  const insert = main.prepare(
    `insert into candidate (search, rank, system, parts, score${names.map((name) => `, ${name}`).join('')})
     values (?, ?, ?, ?, ?${', ?'.repeat(names.length)})`,
  );
  const clear = main.prepare(
    `delete from candidate where search = @search and rank <= @limit +
       (select min(rank) - 1 from candidate indexed by candidate_rank where search = @search)`,
  );
  const find = main.prepare('select * from candidate where search = ? and system = ? and parts = ?');
  const indexes = candidateIndexes(main);

  const insertAll = main.transaction((search: number, batch: readonly NewCandidate[]) => {
    for (const one of batch) {
      const values = columns.map((id) => finite(one.quantities[id] ?? null, id));
      const score = finite(one.score, 'score');
      insert.run(search, one.rank, one.symbols.join(' '), one.parts.join(' '), score, ...values);
    }
  });

  return {
    insert: (search, batch) => insertAll.immediate(search, batch),
    clear: (search, limit) => clear.run({ search, limit }).changes,
    index: (set, quantity) => indexes.require(set, quantity, 'asc'),
    page: (set, query) => candidatePage(main, indexes, set, query),
    find(set, symbols, parts) {
      indexes.requireComposition(set);
      const row = find.get(set.search, symbols.join(' '), parts.join(' '));
      return row === undefined ? null : readCandidate(row as StoredCandidate, set.columns);
    },
    stream: (set, query) => candidateStream(connections, indexes, set, query),
  };
}

function finite(value: number | null, what: string): number | null {
  if (value !== null && !Number.isFinite(value)) throw new RangeError(`${what} is ${value}`);
  return value;
}
