import type { Composition } from '@tiegel/screening';

/**
 * Half the sum of |Δc| over all elements: the share of atoms that would have to be exchanged to
 * turn one alloy into the other. 0 for equal alloys, 1 for alloys without a common element. Amounts
 * may have any total, each its own.
 */
export function compositionDistance(one: Composition, other: Composition): number {
  const [total, otherTotal] = [totalOf(one), totalOf(other)];
  let common = 0;
  for (const symbol of Object.keys(one)) {
    common += Math.min(one[symbol]! / total, (other[symbol] ?? 0) / otherTotal);
  }
  return Math.max(0, 1 - common);
}

/** The same alloy, symbols alphabetical: sums over it then round alike however it was written. */
export function alphabetical(composition: Composition): Composition {
  return Object.fromEntries(Object.entries(composition).sort(([a], [b]) => (a < b ? -1 : 1)));
}

function totalOf(composition: Composition): number {
  return Object.values(composition).reduce((sum, amount) => sum + amount, 0);
}
