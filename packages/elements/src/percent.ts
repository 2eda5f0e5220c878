import { elementNumber } from './elementValue.ts';

/** Shares by symbol, alphabetical, in at.%, 100 in all. */
export type Composition = Record<string, number>;

/**
 * The wt.% of a composition in at.%, symbols alphabetical.
 * @throws RangeError for a symbol without data
 */
export function atomicToWeightPercent(composition: Readonly<Composition>): Record<string, number> {
  return inPercent(mapped(composition, (share, symbol) => share * atomicMass(symbol)));
}

/**
 * The composition in at.% of an alloy given in wt.% (of any total), symbols alphabetical.
 * @throws RangeError for a symbol without data
 */
export function weightToAtomicPercent(weightPercent: Readonly<Record<string, number>>): Composition {
  return inPercent(mapped(weightPercent, (weight, symbol) => weight / atomicMass(symbol)));
}

/** Positive amounts of any total as shares of 100, symbols alphabetical. */
export function inPercent(amounts: Readonly<Record<string, number>>): Record<string, number> {
  const symbols = Object.keys(amounts).sort();
  const total = symbols.reduce((sum, symbol) => sum + amounts[symbol]!, 0);
  // Amounts that already add up to 100 must come back bit for bit: they are addresses and grid points.
  const share = (amount: number): number => (total === 100 ? amount : (amount * 100) / total);
  return Object.fromEntries(symbols.map((symbol) => [symbol, share(amounts[symbol]!)]));
}

const atomicMass = (symbol: string): number => elementNumber(symbol, 'atomicMass')!;

function mapped(
  amounts: Readonly<Record<string, number>>,
  change: (amount: number, symbol: string) => number,
): Record<string, number> {
  return Object.fromEntries(
    Object.entries(amounts).map(([symbol, amount]) => [symbol, change(amount, symbol)]),
  );
}
