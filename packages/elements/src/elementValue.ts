import { type ColumnId, columns } from './data/columns.ts';
import type { DataTable, Value } from './data/dataTable.ts';
import { elastic } from './data/elastic.ts';
import { miedema } from './data/miedema.ts';
import { physical } from './data/physical.ts';
import type { SourceCode } from './data/sources.ts';

const defaultSource = new Map<ColumnId, SourceCode>(columns.map(({ id, source }) => [id, source]));

/** A value with the code of its source (data/sources.ts). */
export interface SourcedValue {
  value: Value;
  source: SourceCode;
}

type ElementValues = Record<ColumnId, SourcedValue>;

function addTable(values: Map<string, Partial<ElementValues>>, table: DataTable): void {
  for (const [symbol, row, deviations = {}] of table.rows) {
    const ofElement = values.get(symbol) ?? {};
    table.columns.forEach((column, index) => {
      ofElement[column] = { value: row[index]!, source: deviations[column] ?? defaultSource.get(column)! };
    });
    values.set(symbol, ofElement);
  }
}

function gather(): ReadonlyMap<string, ElementValues> {
  const values = new Map<string, Partial<ElementValues>>();
  for (const table of [physical, elastic, miedema]) addTable(values, table);
  return values as Map<string, ElementValues>;
}

const gathered = gather();

/**
 * The value of an element in a column, in the column's unit, with its source; value null where
 * there is none, and the source then says why.
 * @throws RangeError for a symbol without data: check symbols where they enter.
 */
export function sourcedValue(symbol: string, column: ColumnId): SourcedValue {
  const values = gathered.get(symbol);
  if (values === undefined) throw new RangeError(`no data of ${symbol}`);
  return values[column];
}

/** The number of an element in a column; null where there is none, and for columns of words. */
export function elementNumber(symbol: string, column: ColumnId): number | null {
  const { value } = sourcedValue(symbol, column);
  return typeof value === 'number' ? value : null;
}
