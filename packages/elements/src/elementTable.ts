import { type Fault, fault, nearest, type ProblemCode, ProblemError } from '@tiegel/contract/terms';
import type { CsvRow } from './csvRows.ts';
import { isAvailable } from './periodicTable.ts';
import { tableRows } from './tableRows.ts';

const longestText = 100_000;
const mostRows = 500;

/** A row of a table of elements: its fields as written, without those whose column the table lacks. */
export interface TableRow<Field extends string> {
  line: number;
  /** /rows/n, counted from 0 without the header */
  pointer: string;
  fields: Partial<Record<Field, string>>;
}

/** The codes by which a kind of table is refused. */
export interface TableCodes {
  tooLarge: ProblemCode;
  unreadable: ProblemCode;
  empty: ProblemCode;
  missingColumn: ProblemCode;
  repeatedColumn: ProblemCode;
  rowLength: ProblemCode;
  repeatedElement: ProblemCode;
}

/**
 * Reads a table with a row for each element: a header that names the fields in any order, one of
 * them `symbol`; further columns are not read. Fields are parted as tableRows reads them. At most
 * 100,000 characters and 500 rows.
 *
 * @param numbers the names of those that hold numbers
 * @returns the rows that have a field for each column, and what is wrong with header and rows as
 *   such, elements that stand twice included
 * @throws ProblemError where the text as a whole is no such table
 */
export function readElementTable<Field extends string>(
  text: string,
  names: readonly Field[],
  numbers: readonly Field[],
  codes: TableCodes,
): { rows: TableRow<Field>[]; faults: Fault[] } {
  const read = readRows(text, numbers, codes);
  const [head, ...body] = read.rows;
  const faults = [...headerFaults(head.fields, names, codes), ...read.faults];
  const rows: TableRow<Field>[] = [];
  body.forEach(({ line, fields }, index) => {
    const pointer = `/rows/${index}`;
    if (fields.length !== head.fields.length) {
      faults.push(
        fault(codes.rowLength, { line, fields: fields.length, columns: head.fields.length }, pointer),
      );
      return;
    }
    const present = names.filter((name) => head.fields.includes(name));
    const named = present.map((name) => [name, fields[head.fields.indexOf(name)]!] as const);
    rows.push({ line, pointer, fields: Object.fromEntries(named) as TableRow<Field>['fields'] });
  });
  return { rows, faults: [...faults, ...repeatedElements(rows, codes)] };
}

/** Header and at least one row; throws where the text as a whole is no such table. */
function readRows(
  text: string,
  numbers: readonly string[],
  codes: TableCodes,
): { rows: [CsvRow, ...CsvRow[]]; faults: Fault[] } {
  refuseAbove(longestText, text.length, 'characters', codes);
  const { rows, broken, faults } = tableRows(text, numbers);
  if (broken !== null) throw new ProblemError([fault(codes.unreadable, { ...broken })]);
  refuseAbove(mostRows, rows.length - 1, 'rows', codes);
  if (rows.length < 2) throw new ProblemError([fault(codes.empty)]);
  return { rows: rows as [CsvRow, ...CsvRow[]], faults };
}

function refuseAbove(limit: number, size: number, of: string, codes: TableCodes): void {
  if (size > limit) throw new ProblemError([fault(codes.tooLarge, { size, limit, of })]);
}

function headerFaults(found: readonly string[], names: readonly string[], codes: TableCodes): Fault[] {
  const others = found.filter((name) => !names.includes(name));
  return names.flatMap((column) => {
    const times = found.filter((name) => name === column).length;
    if (times === 1) return [];
    if (times > 1) return [fault(codes.repeatedColumn, { column }, '/header')];
    return [fault(codes.missingColumn, { column, meant: nearest(column, others) ?? '' }, '/header')];
  });
}

function repeatedElements(rows: readonly TableRow<string>[], codes: TableCodes): Fault[] {
  const lineOf = new Map<string, number>();
  return rows.flatMap(({ line, pointer, fields: { symbol } }) => {
    if (symbol === undefined || !isAvailable(symbol)) return [];
    const first = lineOf.get(symbol);
    if (first !== undefined)
      return [fault(codes.repeatedElement, { line, symbol, first }, `${pointer}/symbol`)];
    lineOf.set(symbol, line);
    return [];
  });
}
