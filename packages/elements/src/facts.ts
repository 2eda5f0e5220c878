import type { Facts } from '@tiegel/contract';
import { columns, pairColumns, priceColumn } from './data/columns.ts';
import { requireElements } from './elementSymbol.ts';
import { elementNumber } from './elementValue.ts';
import type { PairValue } from './own/pairValues.ts';
import { pairEnthalpyWith } from './pairEnthalpy.ts';
import type { PriceList } from './priceList.ts';

export type { Facts } from '@tiegel/contract';

/**
 * The data of a set of elements as screening wants it: symbols alphabetical and each once, all
 * numeric columns, the pair column `mixingEnthalpy` (kJ/mol). With a price list, also the column
 * `price` (currency of the list per kg), null for an element that it does not name. Pair values of
 * one's own stand in the place of the project's.
 * @throws ProblemError element/unknown, element/no-data: every such symbol, pointed at as /0, /1 ...
 */
export function factsFor(
  symbols: readonly string[],
  { prices = null, pairs = [] }: { prices?: PriceList | null; pairs?: readonly PairValue[] } = {},
): Facts {
  requireElements(symbols);
  const ordered = [...new Set(symbols)].sort();
  const numbers: Facts['columns'] = {};
  for (const { id, holds } of columns) {
    if (holds === 'numbers') numbers[id] = ordered.map((symbol) => elementNumber(symbol, id));
  }
  if (prices !== null) {
    numbers[priceColumn.id] = ordered.map((symbol) => prices.prices[symbol]?.pricePerKilogram ?? null);
  }
  const enthalpy = pairEnthalpyWith(pairs);
  const enthalpies = ordered.map((a) => ordered.map((b) => enthalpy(a, b)));
  return { symbols: ordered, columns: numbers, pairs: { [pairColumns[0].id]: enthalpies } };
}

/**
 * What is unknown of these symbols in a column: symbols for an element column (all of them where
 * the facts have no such column at all), pairs written 'Al-Ni' for a pair column. Empty: all is known.
 */
export function missingIn(facts: Facts, column: string, symbols: readonly string[]): string[] {
  const matrix = facts.pairs[column];
  if (matrix !== undefined) return missingPairs(facts, matrix, symbols);
  const values = facts.columns[column];
  return symbols.filter((symbol) => (values?.[facts.symbols.indexOf(symbol)] ?? null) === null);
}

function missingPairs(facts: Facts, matrix: (number | null)[][], symbols: readonly string[]): string[] {
  const missing: string[] = [];
  symbols.forEach((a, index) => {
    for (const b of symbols.slice(index + 1)) {
      const value = matrix[facts.symbols.indexOf(a)]?.[facts.symbols.indexOf(b)] ?? null;
      if (value === null) missing.push(`${a}-${b}`);
    }
  });
  return missing;
}
