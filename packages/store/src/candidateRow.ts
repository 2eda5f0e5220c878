import type { Candidate } from '@tiegel/contract';
import { columnOf } from './candidateColumns.ts';

/** A row of the table candidate, with a column q_... for each quantity. */
export interface StoredCandidate {
  rank: number;
  system: string;
  parts: string;
  score: number | null;
  [quantity: string]: string | number | null;
}

/** The candidate that a row holds: parts become at.%, of their sum. */
export function readCandidate(row: StoredCandidate, quantities: readonly string[]): Candidate {
  const parts = row.parts.split(' ').map(Number);
  const whole = parts.reduce((sum, part) => sum + part, 0);
  const shares = row.system.split(' ').map((symbol, place) => [symbol, (100 * parts[place]!) / whole]);
  return {
    rank: row.rank,
    composition: Object.fromEntries(shares),
    quantities: Object.fromEntries(quantities.map((id) => [id, row[columnOf(id)] ?? null])) as Record<
      string,
      number | null
    >,
    score: row.score,
  };
}
