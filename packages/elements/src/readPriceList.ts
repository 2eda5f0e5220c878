import { type Fault, fault, ProblemError } from '@tiegel/contract/terms';
import { readElementTable, type TableCodes } from './elementTable.ts';
import { csvText } from './own/csvText.ts';
import type { PriceList } from './priceList.ts';
import { isCurrency, type PriceField, type PriceRow, priceFields, rowFaults } from './priceRow.ts';

const codes: TableCodes = {
  tooLarge: 'prices/too-large',
  unreadable: 'prices/unreadable',
  empty: 'prices/empty',
  missingColumn: 'prices/missing-column',
  repeatedColumn: 'prices/repeated-column',
  rowLength: 'prices/row-length',
  repeatedElement: 'prices/repeated-element',
};

/**
 * Reads a lab's own price list: CSV with the header symbol, pricePerKilogram, currency, date,
 * source in any order; further columns are not read. Prices are of the pure element, per kilogram,
 * with a decimal point (or comma, see tableRows), all in one currency; dates as 2026-11-25. At most 100,000 characters and
 * 500 rows.
 * @throws ProblemError with every fault, pointed at as /rows/3/currency (rows from 0, header not
 *   counted): prices/*, element/unknown, element/no-data
 */
export function readPriceList(text: string): PriceList {
  const { rows, faults } = readElementTable(text, priceFields, ['pricePerKilogram'], codes);
  faults.push(...rows.flatMap(rowFaults), ...otherCurrencies(rows));
  if (faults.length > 0) throw new ProblemError(faults);
  return priceListOf(rows as CheckedRow[]);
}

/** The same as a file that readPriceList reads. */
export function priceListCsv({ currency, prices }: PriceList): string {
  return csvText(
    priceFields,
    Object.entries(prices).map(([symbol, { pricePerKilogram, date, source }]) => [
      symbol,
      pricePerKilogram,
      currency,
      date,
      source,
    ]),
  );
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

function otherCurrencies(rows: readonly PriceRow[]): Fault[] {
  const readable = rows.filter(({ fields }) => isCurrency(fields.currency ?? ''));
  const first = readable[0]?.fields.currency ?? '';
  return readable
    .filter(({ fields }) => fields.currency !== first)
    .map(({ line, pointer, fields }) =>
      fault('prices/several-currencies', { line, found: fields.currency!, first }, `${pointer}/currency`),
    );
}
