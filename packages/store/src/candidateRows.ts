import type { Candidate } from '@tiegel/contract';
import { columnOf } from './candidateColumns.ts';
import type { CandidateSet } from './candidateSet.ts';
import type { Connection } from './connections.ts';

/** Rows of candidates by rank. */
export interface CandidateRows {
  /** Reads candidates of a set; null for a rank that is not there. */
  reader(set: CandidateSet): (rank: number) => Candidate | null;
}

export function candidateRows(connection: Connection): CandidateRows {
  const statements = new Map<string, ReturnType<Connection['prepare']>>();

  function statementFor(columns: readonly string[]) {
    const key = columns.join();
    let statement = statements.get(key);
    if (!statement) {
      const names = ['rank', 'system', 'parts', 'score', 'front', ...columns.map(columnOf)];
      statement = connection
        .prepare(`select ${names.join(', ')} from candidate where search = ? and rank = ?`)
        .raw();
      statements.set(key, statement);
    }
    return statement;
  }

  return {
    reader({ search, columns, ids = columns }) {
      const statement = statementFor(columns);
      return (rank) => {
        const row = statement.get([search, rank]) as Row | undefined;
        return row === undefined ? null : candidateOf(row, ids);
      };
    },
  };
}

type Row = [
  rank: number,
  system: string,
  parts: string,
  score: number | null,
  front: number | null,
  ...values: (number | null)[],
];

/** Where the values of quantities begin in a row. */
const firstValue = 5;

/** The candidate that a row holds: parts become at.%, of their sum. */
function candidateOf(row: Row, ids: readonly string[]): Candidate {
  const [rank, system, parts, score, front] = row;
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
