/**
 * How far a computed sum may lie from the algebraic one, when the sizes of its terms add up to
 * `weight`: 0 where all terms are integers that a double adds exactly, else a bound on the
 * rounding of up to a hundred terms.
 */
export function sumMargin(weight: number, integers: boolean): number {
  return integers && weight < 2 ** 52 ? 0 : weight * 2 ** -46;
}
