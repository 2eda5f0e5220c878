import type { Candidate, CandidatePage, CandidateQuery } from '@tiegel/contract';
import type { Connections } from '../sharing/connections.ts';
import { candidateArrays } from './candidateArrays.ts';
import { addColumns } from './candidateColumns.ts';
import { isAtHand, pageSteps } from './candidateLine.ts';
import { candidatePage, startOf } from './candidatePage.ts';
import { candidateRows } from './candidateRows.ts';
import type { CandidateSet } from './candidateSet.ts';
import { candidateStream } from './candidateStream.ts';
import {
  type CandidateColumns,
  type ColumnsAsked,
  candidateCounts,
  candidateValues,
} from './candidateValues.ts';
import { columnBlocks } from './columnBlocks.ts';
import { compositionHash } from './compositionHash.ts';
import { candidateInsertion, type NewCandidates } from './insertCandidates.ts';

/** Columns of candidates in memory take up to so much: eight of 10⁶ values. */
const mostBytesHeld = 64 * 2 ** 20;

export interface CandidateTable {
  /** Adds a batch, in one transaction. A number that is infinite is refused. */
  insert(search: number, batch: NewCandidates): void;
  /** Takes away up to `limit` of a search's candidates, the best first, and their columns; returns how many. */
  clear(search: number, limit: number): number;
  /** Makes ready what a page, or all that a query selects, needs, in steps of some ten milliseconds: others can be answered in between. Each yields which share of the query's order is made, while one is. */
  prepare(set: CandidateSet, query: CandidateQuery): Generator<number>;
  /** Lets go what is held in memory of a search's candidates. */
  letGo(search: number): void;
  /** A page in the query's order. Throws request/invalid for a key that is not one of this search, filters and order. */
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

/** @param held up to how many bytes columns are held in memory */
export function candidateTable(
  connections: Connections,
  columns: readonly string[],
  held: number = mostBytesHeld,
): CandidateTable {
  const { main } = connections;
  addColumns(main, columns);
  const arrays = candidateArrays(connections, held);
  const blocks = columnBlocks(main);
  const source = { connection: main, arrays, rows: candidateRows(main) };
  const insert = candidateInsertion(main);
  const clear = main.prepare(
    `delete from candidate where search = ? and rank in
       (select rank from candidate indexed by candidate_rank where search = ? order by rank limit ?)`,
  );
  const textAt = main.prepare('select system, parts from candidate where search = ? and rank = ?');

  const clearSome = main.transaction((search: number, limit: number) => {
    blocks.remove(search);
    return clear.run(search, search, limit).changes;
  });

  /** The ranks that may be those of a composition, of which one is. */
  function ranksLike(set: CandidateSet, system: string, parts: string): number[] {
    const hash = compositionHash(system, parts);
    const ranks: number[] = [];
    const hashes = arrays.hashes(set);
    for (let at = hashes.indexOf(hash); at >= 0; at = hashes.indexOf(hash, at + 1)) ranks.push(at + 1);
    return ranks;
  }

  return {
    insert(search, batch) {
      arrays.drop(search);
      insert(search, batch);
    },
    clear(search, limit) {
      arrays.drop(search);
      return clearSome.immediate(search, limit);
    },
    *prepare(set, query) {
      if (!isAtHand(arrays, set, query)) yield* pageSteps(arrays, set, query, startOf(set, query));
    },
    letGo: (search) => arrays.forget(search),
    page: (set, query) => candidatePage(source, set, query),
    find(set, symbols, parts) {
      const sought = { system: symbols.join(' '), parts: parts.join(' ') };
      const rank = ranksLike(set, sought.system, sought.parts).find((one) => {
        const found = textAt.get(set.search, one) as typeof sought | undefined;
        return found?.system === sought.system && found.parts === sought.parts;
      });
      return rank === undefined ? null : (source.rows.read(set, [rank])[0] ?? null);
    },
    stream: (set, query) => candidateStream(connections, source, set, query),
    values: (set, query, asked) => candidateValues(source, set, query, asked),
    counts: (set, query) => candidateCounts(source, set, query),
  };
}
