const STEPS_PER_NAT = 2 ** 50;

/**
 * c ln c of a mole fraction c (0 at c = 0), rounded to a multiple of 2⁻⁵⁰ nat.
 *
 * Such multiples add without rounding as long as the sum stays below 8, so the entropy of a
 * composition does not depend on the order of its elements: permuted shares tie digit for digit,
 * on every path that sums these terms. The rounding itself (at most 4.4e-16 nat) is below the
 * error of the logarithm.
 */
export function entropyTerm(share: number): number {
  if (share === 0) return 0;
  return Math.round(share * Math.log(share) * STEPS_PER_NAT) / STEPS_PER_NAT;
}
