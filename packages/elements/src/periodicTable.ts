import { type Family, periodicTable } from './data/periodicTable.ts';
import { physical } from './data/physical.ts';

/** An element and its place in the periodic table. `group` is null for lanthanides and actinides, which are drawn apart. */
export interface Element {
  symbol: string;
  atomicNumber: number;
  /** English, IUPAC */
  name: string;
  period: number;
  group: number | null;
  family: Family;
}

const known = new Set(physical.rows.map(([symbol]) => symbol));
const all: readonly Element[] = periodicTable.map(([symbol, atomicNumber, name, period, group, family]) => ({
  symbol,
  atomicNumber,
  name,
  period,
  group,
  family,
}));

/** The elements with data, by atomic number. */
export const elements: readonly Element[] = all.filter(({ symbol }) => known.has(symbol));

/** The rest of the periodic table: no data here, listed so that a page can draw the whole table. */
export const unavailable: readonly Element[] = all.filter(({ symbol }) => !known.has(symbol));

/** Symbols of the elements with data, alphabetical. */
export const symbols: readonly string[] = [...known].sort();

const bySymbol = new Map(all.map((element) => [element.symbol, element]));

/** Any element of the periodic table by its symbol, with data or without; null for a word that is no symbol. */
export function elementOf(symbol: string): Element | null {
  return bySymbol.get(symbol) ?? null;
}

/** Whether this is the symbol of an element with data. */
export function isAvailable(symbol: string): boolean {
  return known.has(symbol);
}
