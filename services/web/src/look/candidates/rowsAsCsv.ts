import type { Candidate } from '@tiegel/contract';
import { formatComposition } from '@tiegel/elements';
import type { ShownQuantity } from '../../server/types.ts';

/** Rows of a table as CSV with a head that names the units; numbers in full, with a point. */
export function rowsAsCsv(rows: readonly Candidate[], columns: readonly ShownQuantity[]): string {
  const head = [
    'rank',
    'composition (at.%)',
    ...columns.map(({ id, unit }) => (unit === '' ? id : `${id} (${unit})`)),
  ];
  const lines = rows.map(({ rank, composition, quantities }) => [
    String(rank),
    formatComposition(composition),
    ...columns.map(({ id }) => String(quantities[id] ?? '')),
  ]);
  return [head, ...lines].map((line) => line.join(',')).join('\r\n');
}
