import { type Composition, elementNumber } from '@tiegel/elements';
import { fractionOf, type Material } from './material.ts';

/** at.% by symbol */
export type RoundingBounds = Record<string, number>;

/**
 * How far (at.%) rounding each mass by at most half a step can bring each share from the target.
 * With nᵢ the moles of element i in the rounded masses after losses, eᵢ the most that half a step of
 * every material can change them, n and e their sums: |Δxᵢ| ≤ (eᵢ(1 − xᵢ) + xᵢ(e − eᵢ)) / (n − e),
 * x the target. Wider than the box of masses allows by the second order alone, and by what one material
 * changes in two elements at once.
 */
export function roundingBounds(
  materials: readonly Material[],
  grams: readonly number[],
  batch: { resolution: number; loss: Readonly<Record<string, number>>; composition: Composition },
): RoundingBounds {
  const { resolution, loss, composition } = batch;
  const molesIn = (symbol: string, of: (at: number) => number): number => {
    const kept = (1 - (loss[symbol] ?? 0) / 100) / elementNumber(symbol, 'atomicMass')!;
    return materials.reduce((sum, material, at) => sum + fractionOf(material, symbol) * of(at) * kept, 0);
  };
  const symbols = Object.keys(composition);
  const moles = symbols.map((symbol) => molesIn(symbol, (at) => grams[at]!));
  const errors = symbols.map((symbol) => molesIn(symbol, () => resolution / 2));
  const sum = (values: readonly number[]) => values.reduce((total, one) => total + one, 0);
  const [n, e] = [sum(moles), sum(errors)];
  if (e >= n) return Object.fromEntries(symbols.map((symbol) => [symbol, 100]));
  return Object.fromEntries(
    symbols.map((symbol, at) => {
      const share = composition[symbol]! / 100;
      const bound = (errors[at]! * (1 - share) + share * (e - errors[at]!)) / (n - e);
      return [symbol, Math.min(100, 100 * bound)];
    }),
  );
}
