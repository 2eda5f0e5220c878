import type { Direction, TableColumn } from './tableColumn.ts';

/** Rows in the order of a column's values, those without a value last either way; equal ones stay as they stood. */
export function sortRows<Row>(
  rows: readonly Row[],
  column: Pick<TableColumn<Row>, 'value'> | undefined,
  direction: Direction,
): readonly Row[] {
  if (!column) return rows;
  const sign = direction === 'asc' ? 1 : -1;
  return rows
    .map((row) => ({ row, value: column.value(row) }))
    .sort((a, b) => {
      if (a.value === null || b.value === null) return Number(a.value === null) - Number(b.value === null);
      return sign * compare(a.value, b.value);
    })
    .map(({ row }) => row);
}

function compare(a: number | string, b: number | string): number {
  if (typeof a === 'number' && typeof b === 'number') return a - b;
  return String(a).localeCompare(String(b), 'en');
}
