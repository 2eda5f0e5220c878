import type { ColumnId } from './columns.ts';
import type { SourceCode } from './sources.ts';

/** A value of an element: a number, a word (miedemaClass alone) or null where there is none. */
export type Value = number | string | null;

/** One element: symbol, values in the order of the table's columns, sources of the values that deviate from their column. */
type DataRow = readonly [string, readonly Value[], Partial<Record<ColumnId, SourceCode>>?];

/** Columns of all elements, an element a row, in the order of atomic numbers. */
export interface DataTable {
  columns: readonly ColumnId[];
  rows: readonly DataRow[];
}
