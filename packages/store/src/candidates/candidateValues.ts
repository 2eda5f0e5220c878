import type { CandidateQuery } from '@tiegel/contract';
import type { Connection } from '../sharing/connections.ts';
import { storeProblem } from '../storeProblem.ts';
import { columnOf } from './candidateColumns.ts';
import type { CandidateSet } from './candidateSet.ts';
import type { CandidateSource } from './candidateSource.ts';
import { always, filterOf } from './condition.ts';

/** Ranks read at once: some 20 ms. */
const stretch = 20_000;

/**
 * Candidates as columns: `ranks[i]` has `values[q][i]`, q counting the quantities asked for; with
 * compositions also the symbols, alphabetical with spaces between, and the parts of the grid.
 */
export interface CandidateColumns {
  ranks: number[];
  values: (number | null)[][];
  systems: string[];
  parts: string[];
}

/** What is read of each candidate, and of which: every `every`-th rank, and all ranks up to `best`. */
export interface ColumnsAsked {
  quantities: readonly string[];
  compositions?: boolean;
  every?: number;
  best?: number;
}

/**
 * The candidates that meet a query's filters, by rank (its order does not count), in stretches:
 * whoever reads them lets others be answered between two stretches, and no statement stays open
 * meanwhile.
 */
export function* candidateValues(
  { connection }: CandidateSource,
  { search, kept }: CandidateSet,
  query: CandidateQuery,
  { quantities, compositions = false, every = 1, best = 0 }: ColumnsAsked,
): Generator<CandidateColumns> {
  const names = ['rank', ...quantities.map(columnOf), ...(compositions ? ['system', 'parts'] : [])];
  const filter = filterOf(query);
  const conditions = [
    'search = ? and rank between ? and ?',
    ...(every > 1 ? ['((rank - 1) % ? = 0 or rank <= ?)'] : []),
    ...(filter === always ? [] : [filter.sql]),
  ];
  const rows = connection
    .prepare(
      `select ${names.join(', ')} from candidate indexed by candidate_rank where ${conditions.join(' and ')} order by rank`,
    )
    .raw();
  for (let first = 1; first <= kept; first += stretch * every) {
    const last = first + stretch * every - 1;
    const values = [search, first, last, ...(every > 1 ? [every, best] : []), ...filter.values];
    const found = told(connection, () => rows.all(...values) as Row[]);
    yield inColumns(found, quantities.length, compositions);
  }
}

type Row = [rank: number, ...rest: (number | string | null)[]];

function inColumns(rows: readonly Row[], quantities: number, compositions: boolean): CandidateColumns {
  const column = (place: number) => rows.map((row) => row[place]);
  return {
    ranks: column(0) as number[],
    values: Array.from({ length: quantities }, (_, place) => column(place + 1) as (number | null)[]),
    systems: compositions ? (column(quantities + 1) as string[]) : [],
    parts: compositions ? (column(quantities + 2) as string[]) : [],
  };
}

/** How many candidates meet a query's filters, stretch by stretch. */
export function* candidateCounts(
  { connection }: CandidateSource,
  { search, kept }: CandidateSet,
  query: CandidateQuery,
): Generator<number> {
  const filter = filterOf(query);
  const count = connection
    .prepare(
      `select count(*) from candidate indexed by candidate_rank where search = ? and rank between ? and ?${filter === always ? '' : ` and ${filter.sql}`}`,
    )
    .pluck();
  for (let first = 1; first <= kept; first += stretch) {
    yield told(connection, () => count.get(search, first, first + stretch - 1, ...filter.values) as number);
  }
}

/** What a stretch reads; what the store refuses comes as one of its problems, however late it is asked. */
function told<Found>(connection: Connection, read: () => Found): Found {
  try {
    return read();
  } catch (error) {
    throw storeProblem(error, connection.name);
  }
}
