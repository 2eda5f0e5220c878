import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import { columns } from './data/columns.ts';
import type { Value } from './data/dataTable.ts';
import { sourcedValue } from './elementValue.ts';
import type { PairValue } from './own/pairValues.ts';
import type { OwnColumn } from './ownColumn.ts';
import { elements } from './periodicTable.ts';
import type { PriceList } from './priceList.ts';
import { type PairRecord, pairRecords } from './records.ts';

/**
 * The version of all data that a result can depend on: every element value, every pair enthalpy
 * (one's own before the project's), the price list in force and the columns of one's own that are
 * read, twelve hexadecimal digits. Any other value, price, date or source of a price gives another
 * version; the order in which a list names its elements does not, nor the source of a pair value.
 */
export function dataVersionOf(
  prices: PriceList | null,
  columns: readonly OwnColumn[] = [],
  pairs: readonly PairValue[] = [],
): string {
  return digestOf(versionedData(prices, columns, pairs));
}

/** The data that make a version: values by symbol and column, pairs, prices, columns of one's own where there are some. */
export interface VersionedData {
  elements: Record<string, Record<string, Value>>;
  pairs: PairRecord[];
  prices: PriceList | null;
  ownColumns?: readonly OwnColumn[];
}

export function versionedData(
  prices: PriceList | null,
  own: readonly OwnColumn[] = [],
  pairs: readonly PairValue[] = [],
): VersionedData {
  const valuesOf = (symbol: string): Record<string, Value> =>
    Object.fromEntries(columns.map(({ id }) => [id, sourcedValue(symbol, id).value]));
  return {
    elements: Object.fromEntries(elements.map(({ symbol }) => [symbol, valuesOf(symbol)])),
    pairs: pairRecords(pairs).map(({ a, b, mixingEnthalpy }) => ({ a, b, mixingEnthalpy })),
    prices,
    ...(own.length > 0 ? { ownColumns: own } : {}),
  };
}

/** The first twelve hexadecimal digits of the SHA-256 of a value as JSON with sorted keys. */
export function digestOf(data: unknown): string {
  return bytesToHex(sha256(utf8ToBytes(JSON.stringify(data, sortedKeys)))).slice(0, 12);
}

function sortedKeys(_key: string, value: unknown): unknown {
  if (value === null || typeof value !== 'object' || Array.isArray(value)) return value;
  return Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)));
}
