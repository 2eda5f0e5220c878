import type { Candidate } from '@tiegel/contract';
import type { ExportedRow } from './openExport.ts';

/** A value that is another than in the export; `row` counts from 1, null stands for no value or no row. */
interface Difference {
  row: number;
  column: string;
  was: string | number | null;
  is: string | number | null;
}

export interface Comparison {
  rows: number;
  same: boolean;
  differing: number;
  /** the first of them */
  differences: Difference[];
}

const shownDifferences = 20;

/**
 * Compares the rows of an export with candidates, row by row and value by value. Numbers must be
 * equal to the last bit: a search is a function of specification, data and engine version.
 */
export async function compareRows(
  exported: AsyncIterable<ExportedRow>,
  candidates: Iterable<Candidate>,
): Promise<Comparison> {
  const found = candidates[Symbol.iterator]();
  const comparison: Comparison = { rows: 0, same: true, differing: 0, differences: [] };
  for await (const was of exported) {
    comparison.rows += 1;
    const { value, done } = found.next();
    note(comparison, done ? [gone(comparison.rows)] : differencesIn(was, value, comparison.rows));
  }
  for (let { done } = found.next(), row = comparison.rows + 1; !done; { done } = found.next(), row += 1) {
    note(comparison, [{ row, column: 'composition', was: null, is: 'a candidate more' }]);
  }
  return comparison;
}

function note(comparison: Comparison, differences: readonly Difference[]): void {
  if (differences.length === 0) return;
  comparison.same = false;
  comparison.differing += 1;
  const room = shownDifferences - comparison.differences.length;
  comparison.differences.push(...differences.slice(0, Math.max(0, room)));
}

function gone(row: number): Difference {
  return { row, column: 'composition', was: 'a candidate', is: null };
}

function differencesIn(was: ExportedRow, candidate: Candidate, row: number): Difference[] {
  const { rank, score, composition, quantities } = candidate;
  const is: Record<string, number | null | undefined> = { rank, score, ...quantities, ...composition };
  const symbols = Object.keys(composition).filter((symbol) => !(symbol in was));
  const columns = [...Object.keys(was).filter((column) => column !== 'composition'), ...symbols];
  return columns.flatMap((column) => {
    const before = numberOf(was[column]);
    const now = is[column] ?? null;
    // A table has a column for every element of the pool, and 0 where it is absent.
    const equal = before === now || (before === 0 && now === null);
    return equal ? [] : [{ row, column, was: before, is: now }];
  });
}

function numberOf(value: string | number | null | undefined): number | null {
  return value === null || value === undefined ? null : Number(value);
}
