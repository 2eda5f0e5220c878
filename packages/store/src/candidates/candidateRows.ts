import type { Candidate } from '@tiegel/contract';
import type { Connection } from '../sharing/connections.ts';
import { columnOf } from './candidateColumns.ts';
import type { CandidateSet } from './candidateSet.ts';

/** Rows of candidates by rank. */
export interface CandidateRows {
  /** The candidates of a set that have these ranks, in this order; a rank that is not there is left out. */
  read(set: CandidateSet, ranks: readonly number[]): Candidate[];
}

export function candidateRows(connection: Connection): CandidateRows {
  const statements = new Map<string, ReturnType<Connection['prepare']>>();

  /** One for all ranks: SQLite takes and leaves its lock for each statement, which took as long as reading the rows. */
  function statementFor(columns: readonly string[]) {
    const key = columns.join();
    let statement = statements.get(key);
    if (!statement) {
      const names = ['rank', 'system', 'parts', 'score', 'front', ...columns.map(columnOf)];
      statement = connection
        .prepare(
          `select wanted.key, ${names.map((name) => `candidate.${name}`).join(', ')}
             from json_each(?) as wanted cross join candidate
             where candidate.search = ? and candidate.rank = wanted.value`,
        )
        .raw();
      statements.set(key, statement);
    }
    return statement;
  }

  return {
    read({ search, columns, ids = columns }, ranks) {
      const found: Candidate[] = [];
      const statement = statementFor(columns);
      for (const row of statement.all([JSON.stringify(ranks), search]) as Row[]) {
        found[row[0]] = candidateOf(row, ids);
      }
      // Places of ranks that are not there are holes.
      return found.flat();
    },
  };
}

type Row = [
  place: number,
  rank: number,
  system: string,
  parts: string,
  score: number | null,
  front: number | null,
  ...values: (number | null)[],
];

/** Where the values of quantities begin in a row. */
const firstValue = 6;

/** The candidate that a row holds: parts become at.%, of their sum. */
function candidateOf(row: Row, ids: readonly string[]): Candidate {
  const [, rank, system, parts, score, front] = row;
  const amounts = parts.split(' ').map(Number);
  const whole = amounts.reduce((sum, part) => sum + part, 0);
  const composition: Record<string, number> = {};
  const symbols = system.split(' ');
  for (let place = 0; place < symbols.length; place += 1) {
    composition[symbols[place]!] = (100 * amounts[place]!) / whole;
  }
  const quantities: Record<string, number | null> = {};
  for (let place = 0; place < ids.length; place += 1) {
    quantities[ids[place]!] = row[firstValue + place] as number | null;
  }
  return { rank, composition, quantities, score, ...(front === null ? {} : { front: front === 1 }) };
}
