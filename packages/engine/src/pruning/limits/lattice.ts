import type { Step } from '@tiegel/screening';

/** The values that a sum over whole parts may have: whole multiples of a unit, as they are computed. */
export interface Lattice {
  /** The least of them that is not below a value; the whole in parts. */
  atLeast(value: number, total: number): number;
  /** The greatest of them that is not above a value. */
  atMost(value: number, total: number): number;
}

/** The lattice of a step: a sum of short decimals over parts has one, which also contains values that no point has. Else null. */
export function latticeOf(step: Step): Lattice | null {
  if ((step.kind !== 'linear' && step.kind !== 'pairs') || !step.decimal) return null;
  const { kind, coefficients, divisor } = step;
  const known = coefficients.filter((one) => !Number.isNaN(one));
  // All amounts add up to the whole, so of a linear sum only differences of coefficients count.
  const origin = kind === 'linear' ? (known[0] ?? 0) : 0;
  const unit = known.reduce((common, one) => greatestCommonDivisor(common, Math.abs(one - origin)), 0) || 1;
  const scaleOf = (total: number) => divisor * total * (kind === 'linear' ? 1 : total);

  /** The nearest member in a direction. The division rounds, so what it gives is compared. */
  function nearest(value: number, total: number, direction: 1 | -1): number {
    const scale = scaleOf(total);
    const start = origin * total;
    const member = (steps: number) => (start + steps * unit) / scale;
    const near = Math.round((value * scale - start) / unit);
    // Two steps on either side are far more than rounding can be off.
    for (let steps = near - 2 * direction; ; steps += direction) {
      if (direction * (member(steps) - value) >= 0 || steps === near + 2 * direction) return member(steps);
    }
  }

  return {
    atLeast: (value, total) => (isOpen(value) ? value : nearest(value, total, 1)),
    atMost: (value, total) => (isOpen(value) ? value : nearest(value, total, -1)),
  };
}

/** A limit that is open on one side is the greatest number there is. */
const isOpen = (value: number) => !(Math.abs(value) < 1e12);

function greatestCommonDivisor(one: number, other: number): number {
  let [left, right] = [one, other];
  while (right > 0) [left, right] = [right, left % right];
  return left;
}
