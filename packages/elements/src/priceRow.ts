import { type Fault, fault } from '@tiegel/contract/terms';
import { symbolFault } from './elementSymbol.ts';
import type { TableRow } from './elementTable.ts';
import { shortened } from './shortened.ts';

/** The columns of a price list. */
export const priceFields = ['symbol', 'pricePerKilogram', 'currency', 'date', 'source'] as const;
export type PriceField = (typeof priceFields)[number];

export type PriceRow = TableRow<PriceField>;

const longestSource = 200;
const highestPrice = 1e9;

type Check = (text: string, line: number, pointer: string) => Fault | null;

const checks: Record<PriceField, Check> = {
  symbol: (text, line, pointer) => symbolFault(text, pointer, ` on line ${line}`),
  pricePerKilogram: (text, line, pointer) => {
    if (isPrice(text)) return null;
    const code = /^\d[\d.]*,[\d,.]*$/.test(text) ? 'prices/decimal-comma' : 'prices/price';
    return fault(code, { line, found: shortened(text) }, pointer);
  },
  currency: (text, line, pointer) =>
    isCurrency(text) ? null : fault('prices/currency', { line, found: shortened(text) }, pointer),
  date: (text, line, pointer) =>
    isDay(text) ? null : fault('prices/date', { line, found: shortened(text) }, pointer),
  source: (text, line, pointer) => (isShown(text) ? null : fault('prices/source', { line }, pointer)),
};

/** What is wrong inside one row, each fault pointed at as /rows/3/currency. */
export function rowFaults({ line, pointer, fields }: PriceRow): Fault[] {
  return priceFields.flatMap((field) => {
    const text = fields[field];
    return text === undefined ? [] : (checks[field](text, line, `${pointer}/${field}`) ?? []);
  });
}

/** Three capital letters, the form of ISO 4217. */
export function isCurrency(text: string): boolean {
  return /^[A-Z]{3}$/.test(text);
}

function isPrice(text: string): boolean {
  const price = Number(text);
  return /^\d+(\.\d+)?([eE][+-]?\d+)?$/.test(text) && price > 0 && price <= highestPrice;
}

function isDay(text: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return false;
  const instant = Date.parse(`${text}T00:00:00Z`);
  // Some readers of dates turn 30 February into 1 March.
  return !Number.isNaN(instant) && new Date(instant).toISOString().startsWith(text);
}

function isShown(text: string): boolean {
  return text.trim() !== '' && text.length <= longestSource && !/\p{Cc}/u.test(text);
}
