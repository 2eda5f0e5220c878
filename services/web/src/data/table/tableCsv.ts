import { csvLine } from '@tiegel/elements';
import type { TableColumn } from './tableColumn.ts';

/** Rows as CSV (RFC 4180) with a head that names the units; numbers in full, with a point. */
export function tableCsv<Row>(rows: readonly Row[], columns: readonly TableColumn<Row>[]): string {
  const head = columns.map(({ id, unit }) => (unit === '' ? id : `${id} (${unit})`));
  const lines = rows.map((row) => columns.map(({ value }) => String(value(row) ?? '')));
  return [head, ...lines].map((row) => csvLine(row)).join('\r\n');
}
