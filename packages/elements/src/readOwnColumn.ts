import { fault, type Mixing, ProblemError } from '@tiegel/contract/terms';
import { columns, pairColumns, priceColumn } from './data/columns.ts';
import { readElementTable, type TableCodes } from './elementTable.ts';
import { csvText } from './own/csvText.ts';
import type { OwnColumn } from './ownColumn.ts';
import {
  descriptionFaults,
  idOf,
  type OwnColumnRow,
  otherDescriptions,
  ownColumnFields,
  ownRowFaults,
} from './ownColumnRow.ts';

const codes: TableCodes = {
  tooLarge: 'column/too-large',
  unreadable: 'column/unreadable',
  empty: 'column/empty',
  missingColumn: 'column/missing-column',
  repeatedColumn: 'column/repeated-column',
  rowLength: 'column/row-length',
  repeatedElement: 'column/repeated-element',
};

/**
 * Reads a column of element data of one's own: CSV with the header symbol, value, name, unit, mixing
 * in any order; further columns are not read. Name, unit (as printed; empty for a plain number) and
 * mixing (mole, mass or volume) are said in the first row, and are the same or empty in the others.
 * Values have a decimal point (or comma, see tableRows); an element that is not named has no value. At most 100,000 characters
 * and 500 rows.
 *
 *   symbol,value,name,unit,mixing
 *   Al,237,Thermal conductivity,W/(m K),volume
 *   Ni,91,,,
 *
 * @throws ProblemError with every fault, pointed at as /rows/3/value (rows from 0, header not
 *   counted): column/*, element/unknown, element/no-data
 */
export function readOwnColumn(text: string): OwnColumn {
  const { rows, faults } = readElementTable(text, ownColumnFields, ['value'], codes);
  const [first] = rows;
  if (first) faults.push(...descriptionFaults(first), ...takenFaults(first));
  faults.push(...rows.flatMap(ownRowFaults), ...otherDescriptions(rows));
  if (faults.length > 0) throw new ProblemError(faults);
  return ownColumnOf(rows as CheckedRow[]);
}

/** The same as a file that readOwnColumn reads. */
export function ownColumnCsv({ name, unit, mixing, values }: OwnColumn): string {
  return csvText(
    ownColumnFields,
    Object.entries(values).map(([symbol, value], at) => [
      symbol,
      value,
      ...(at === 0 ? [name, unit, mixing] : ['', '', '']),
    ]),
  );
}

/** A row in which nothing is missing and nothing is wrong. */
interface CheckedRow extends OwnColumnRow {
  fields: Record<(typeof ownColumnFields)[number], string>;
}

function ownColumnOf(rows: readonly CheckedRow[]): OwnColumn {
  const { name, unit, mixing } = rows[0]!.fields;
  return {
    id: idOf(name),
    name,
    unit,
    mixing: mixing as Mixing,
    // −0 + 0 is 0: a zero has no sign, in a formula as in print.
    values: Object.fromEntries(rows.map(({ fields: { symbol, value } }) => [symbol, Number(value) + 0])),
  };
}

const taken: ReadonlySet<string> = new Set([...columns, ...pairColumns, priceColumn].map(({ id }) => id));

function takenFaults({ line, pointer, fields: { name = '' } }: OwnColumnRow) {
  const id = idOf(name);
  return taken.has(id) ? [fault('column/name-taken', { line, name: id }, `${pointer}/name`)] : [];
}
