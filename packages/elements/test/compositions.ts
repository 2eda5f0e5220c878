import fc from 'fast-check';
import { type Composition, symbols } from '../src/index.ts';

/** Any composition of up to ten elements, from traces to nearly pure: amounts over nine decades, in at.%. */
export const anyComposition: fc.Arbitrary<Composition> = fc
  .uniqueArray(fc.tuple(fc.constantFrom(...symbols), fc.double({ min: -6, max: 3, noNaN: true })), {
    minLength: 1,
    maxLength: 10,
    selector: ([symbol]) => symbol,
  })
  .map((amounts) => {
    const sorted = amounts
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([symbol, power]) => [symbol, 10 ** power] as const);
    const total = sorted.reduce((sum, [, amount]) => sum + amount, 0);
    return Object.fromEntries(sorted.map(([symbol, amount]) => [symbol, (amount * 100) / total]));
  })
  .filter((composition) => Object.values(composition).every((share) => share >= 1e-8));

/** The largest difference of a share between two compositions of the same elements, at.%. */
export function largestDifference(a: Composition, b: Composition): number {
  if (Object.keys(a).join() !== Object.keys(b).join()) return Number.POSITIVE_INFINITY;
  return Math.max(...Object.keys(a).map((symbol) => Math.abs(a[symbol]! - b[symbol]!)));
}
