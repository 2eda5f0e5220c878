/** A quotient of two short decimals misses a whole number by rounding alone: 0.3 / 0.1 is 2.9999999999999996. */
const ROUNDING = 1e-6;

/**
 * Bounds in at.% as whole parts of the grid, rounded inwards, at least one part: 5 to 35 in steps
 * of 10 are 1 to 3 parts. Null where no part is left between them.
 */
export function partsOfBounds(bounds: { step: number; min: number; max: number }): {
  least: number;
  most: number;
} | null {
  const least = Math.max(1, Math.ceil(bounds.min / bounds.step - ROUNDING));
  const most = Math.floor(bounds.max / bounds.step + ROUNDING);
  return least <= most ? { least, most } : null;
}
