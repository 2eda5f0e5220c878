import { type Fault, fault, nearest, ProblemError } from '@tiegel/contract';
import { type CsvRow, csvRows } from './csvRows.ts';
import { isAvailable } from './periodicTable.ts';
import type { PriceList } from './priceList.ts';
import { isCurrency, type PriceField, type PriceRow, priceFields, rowFaults } from './priceRow.ts';

const longestText = 100_000;
const mostRows = 500;

/**
 * Reads a lab's own price list: CSV with the header symbol, pricePerKilogram, currency, date,
 * source in any order; further columns are not read. Prices are of the pure element, per kilogram,
 * with a decimal point, all in one currency; dates as 2026-11-25. At most 100,000 characters and
 * 500 rows.
 * @throws ProblemError with every fault, pointed at as /rows/3/currency (rows from 0, header not
 *   counted): prices/*, element/unknown, element/no-data
 */
export function readPriceList(text: string): PriceList {
  const [head, ...body] = readRows(text);
  const faults = headerFaults(head.fields);
  const rows: PriceRow[] = [];
  body.forEach((row, index) => {
    const pointer = `/rows/${index}`;
    if (row.fields.length === head.fields.length) rows.push(namedFields(row, head.fields, pointer));
    else faults.push(lengthFault(row, head.fields.length, pointer));
  });
  faults.push(...rows.flatMap(rowFaults), ...repeatedElements(rows), ...otherCurrencies(rows));
  if (faults.length > 0) throw new ProblemError(faults);
  return priceListOf(rows as CheckedRow[]);
}

/** A row in which nothing is missing and nothing is wrong. */
interface CheckedRow extends PriceRow {
  fields: Record<PriceField, string>;
}

function priceListOf(rows: readonly CheckedRow[]): PriceList {
  const prices = rows.map(({ fields: { symbol, pricePerKilogram, date, source } }) => {
    return [symbol, { pricePerKilogram: Number(pricePerKilogram), date, source }] as const;
  });
  return {
    currency: rows[0]!.fields.currency,
    date: prices
      .map(([, { date }]) => date)
      .sort()
      .at(-1)!,
    invented: false,
    prices: Object.fromEntries(prices),
  };
}

/** Header and at least one row; throws where the text as a whole is no such table. */
function readRows(text: string): [CsvRow, ...CsvRow[]] {
  refuseAbove(longestText, text.length, 'characters');
  const { rows, broken } = csvRows(text);
  if (broken !== null) throw new ProblemError([fault('prices/unreadable', { ...broken })]);
  refuseAbove(mostRows, rows.length - 1, 'rows');
  if (rows[0]?.fields.length === 1 && rows[0].fields[0]!.includes(';')) {
    throw new ProblemError([
      fault('prices/unreadable', { line: 1, what: 'semicolons separate its columns' }),
    ]);
  }
  if (rows.length < 2) throw new ProblemError([fault('prices/empty')]);
  return rows as [CsvRow, ...CsvRow[]];
}

function refuseAbove(limit: number, size: number, of: string): void {
  if (size > limit) throw new ProblemError([fault('prices/too-large', { size, limit, of })]);
}

function headerFaults(found: readonly string[]): Fault[] {
  const others = found.filter((name) => !(priceFields as readonly string[]).includes(name));
  return priceFields.flatMap((column) => {
    const times = found.filter((name) => name === column).length;
    if (times === 1) return [];
    if (times > 1) return [fault('prices/repeated-column', { column }, '/header')];
    return [fault('prices/missing-column', { column, meant: nearest(column, others) ?? '' }, '/header')];
  });
}

function namedFields(row: CsvRow, names: readonly string[], pointer: string): PriceRow {
  const present = priceFields.filter((field) => names.includes(field));
  const fields = Object.fromEntries(present.map((field) => [field, row.fields[names.indexOf(field)]!]));
  return { line: row.line, pointer, fields };
}

function lengthFault({ line, fields }: CsvRow, columns: number, pointer: string): Fault {
  return fault('prices/row-length', { line, fields: fields.length, columns }, pointer);
}

function repeatedElements(rows: readonly PriceRow[]): Fault[] {
  const lineOf = new Map<string, number>();
  return rows.flatMap(({ line, pointer, fields: { symbol } }) => {
    if (symbol === undefined || !isAvailable(symbol)) return [];
    const first = lineOf.get(symbol);
    if (first !== undefined)
      return [fault('prices/repeated-element', { line, symbol, first }, `${pointer}/symbol`)];
    lineOf.set(symbol, line);
    return [];
  });
}

function otherCurrencies(rows: readonly PriceRow[]): Fault[] {
  const readable = rows.filter(({ fields }) => isCurrency(fields.currency ?? ''));
  const first = readable[0]?.fields.currency ?? '';
  return readable
    .filter(({ fields }) => fields.currency !== first)
    .map(({ line, pointer, fields }) =>
      fault('prices/several-currencies', { line, found: fields.currency!, first }, `${pointer}/currency`),
    );
}
