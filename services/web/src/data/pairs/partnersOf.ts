import type { PairView } from '@tiegel/contract';

/** The pairs of an element by the other one of the two, the most attracted first. */
export function partnersOf(
  pairs: readonly Pick<PairView, 'a' | 'b' | 'mixingEnthalpy'>[],
  symbol: string,
): { partner: string; mixingEnthalpy: number }[] {
  return pairs
    .filter(({ a, b }) => a === symbol || b === symbol)
    .map(({ a, b, mixingEnthalpy }) => ({ partner: a === symbol ? b : a, mixingEnthalpy }))
    .sort((one, other) => one.mixingEnthalpy - other.mixingEnthalpy);
}
