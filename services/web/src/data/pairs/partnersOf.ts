import type { PairView } from '../../server/types.ts';

/** The pairs of an element by the other one of the two, the most attracted first. */
export function partnersOf(
  pairs: readonly PairView[],
  symbol: string,
): { partner: string; mixingEnthalpy: number }[] {
  return pairs
    .filter(({ a, b }) => a === symbol || b === symbol)
    .map(({ a, b, mixingEnthalpy }) => ({ partner: a === symbol ? b : a, mixingEnthalpy }))
    .sort((one, other) => one.mixingEnthalpy - other.mixingEnthalpy);
}
