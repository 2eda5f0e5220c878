import { type Fault, fault, nearest, ProblemError } from '@tiegel/contract/terms';
import type { CsvRow } from '../csvRows.ts';
import { shortened } from '../shortened.ts';
import { tableRows } from '../tableRows.ts';

const longestText = 1_000_000;

/** A row of a table of one's own. `of` gives the text of a column, '' where the table lacks it. */
export interface OwnRow<Column extends string> {
  line: number;
  /** /rows/n, counted from 0 without the header */
  pointer: string;
  of: (column: Column) => string;
}

/** What a kind of table looks like. */
export interface OwnTable<Column extends string> {
  columns: readonly Column[];
  needed: readonly Column[];
  /** columns of numbers, in which a decimal comma is read where no comma parts the fields */
  numbers: readonly Column[];
  mostRows: number;
}

/**
 * Reads a table of one's own: a header that names columns in any order, fields parted as tableRows
 * reads them. At most 1,000,000 characters.
 * @returns the rows that have a field for each column, and what is wrong with the others
 * @throws ProblemError where header or text as a whole are no such table: import/too-large,
 *   import/unreadable, import/empty, import/header
 */
export function readOwnTable<Column extends string>(
  text: string,
  table: OwnTable<Column>,
): { rows: OwnRow<Column>[]; faults: Fault[] } {
  const { rows: all, faults } = rowsOf(text, table);
  const [head, ...body] = all;
  const wrong = headFaults(head.fields, table);
  if (wrong.length > 0) throw new ProblemError(wrong);
  const rows: OwnRow<Column>[] = [];
  body.forEach(({ line, fields }, at) => {
    const pointer = `/rows/${at}`;
    if (fields.length === head.fields.length) {
      rows.push({ line, pointer, of: (column) => fields[head.fields.indexOf(column)] ?? '' });
      return;
    }
    const what = `it has ${fields.length} fields where the header has ${head.fields.length}`;
    faults.push(fault('import/unreadable', { line, what }, pointer));
  });
  return { rows, faults };
}

function rowsOf(
  text: string,
  { columns, numbers, mostRows }: OwnTable<string>,
): { rows: [CsvRow, ...CsvRow[]]; faults: Fault[] } {
  const header = columns.join(',');
  refuseAbove(longestText, text.length, 'characters');
  const { rows, broken, faults } = tableRows(text, numbers);
  if (broken !== null) throw new ProblemError([fault('import/unreadable', { ...broken })]);
  refuseAbove(mostRows, rows.length - 1, 'rows');
  if (rows.length < 2) throw new ProblemError([fault('import/empty', { header })]);
  return { rows: rows as [CsvRow, ...CsvRow[]], faults };
}

function refuseAbove(limit: number, size: number, of: string): void {
  if (size > limit) throw new ProblemError([fault('import/too-large', { size, limit, of })]);
}

function headFaults(found: readonly string[], { columns, needed }: OwnTable<string>): Fault[] {
  const report = (what: string) => fault('import/header', { what, header: columns.join(',') }, '/header');
  const strange = found.flatMap((name, at) => {
    if (found.indexOf(name) !== at) return [report(`"${shortened(name)}" stands in it twice`)];
    if (columns.includes(name)) return [];
    const meant = nearest(name, columns);
    return [report(`"${shortened(name)}" is no column of it${meant ? `; did you mean "${meant}"?` : ''}`)];
  });
  const missing = needed.filter((name) => !found.includes(name));
  return [...strange, ...missing.map((name) => report(`the column "${name}" is missing`))];
}

/** A value that is not as it should be, with what would be right. */
export function wrongValue<Column extends string>(
  { line, pointer, of }: OwnRow<Column>,
  column: Column,
  right: string,
): Fault {
  const values = {
    place: `The field "${column}" on line ${line}`,
    found: `"${shortened(of(column))}"`,
    right,
  };
  return fault('request/wrong-value', values, `${pointer}/${column}`);
}

/** Faults of rows that say what an earlier one says; null: a row that cannot be read says nothing. */
export function repeatedRows<Column extends string>(
  rows: readonly OwnRow<Column>[],
  keyOf: (row: OwnRow<Column>, at: number) => { key: string; what: string } | null,
): Fault[] {
  const lineOf = new Map<string, number>();
  return rows.flatMap((row, at) => {
    const found = keyOf(row, at);
    if (found === null) return [];
    const first = lineOf.get(found.key);
    if (first !== undefined) {
      return [fault('import/repeated', { what: found.what, line: row.line, first }, row.pointer)];
    }
    lineOf.set(found.key, row.line);
    return [];
  });
}

/** Whether a text can be shown on a line: no longer than that, no control characters. */
export const isShown = (text: string, longest: number): boolean =>
  text.length <= longest && !/\p{Cc}/u.test(text);
