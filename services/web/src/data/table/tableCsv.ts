import type { TableColumn } from './tableColumn.ts';

/** Rows as CSV (RFC 4180) with a head that names the units; numbers in full, with a point. */
export function tableCsv<Row>(rows: readonly Row[], columns: readonly TableColumn<Row>[]): string {
  const head = columns.map(({ id, unit }) => (unit === '' ? id : `${id} (${unit})`));
  const lines = rows.map((row) => columns.map(({ value }) => String(value(row) ?? '')));
  return [head, ...lines].map((line) => line.map(quoted).join(',')).join('\r\n');
}

/** A field in quotes where it holds something that would end or open one. */
function quoted(field: string): string {
  return /[",\r\n]/.test(field) ? `"${field.replaceAll('"', '""')}"` : field;
}
