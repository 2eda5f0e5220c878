import type { Limit } from '@tiegel/contract';
import { limitTolerance } from '@tiegel/contract/terms';
import { doubleAt, placeOf } from './doubleOrder.ts';

/** Least and greatest double that meet a limit: a value passes exactly when it lies between them. */
export interface LimitRange {
  least: number;
  greatest: number;
}

/**
 * The one statement of what it means to meet a limit. A limit is inclusive, and a value lies on
 * it when |value − limit| ≤ 1e-12·max(1, |limit|). What is not finite is no value and passes
 * nothing, hence the greatest numbers where a side is open.
 *
 * As the two doubles at its ends, so that every path tests the same with two comparisons.
 */
export function limitRange({ min, max }: Limit): LimitRange {
  return {
    least: min === undefined ? -Number.MAX_VALUE : leastOn(min),
    greatest: max === undefined ? Number.MAX_VALUE : -leastOn(-max),
  };
}

/** Whether a value lies on a limit. */
function isOn(value: number, limit: number): boolean {
  return Math.abs(value - limit) <= limitTolerance(limit);
}

/**
 * The least double that lies on a limit: by halving, since near 0 doubles are too dense to step
 * through. There is one border, for the difference of two numbers rounds monotonically.
 */
function leastOn(limit: number): number {
  let off = placeOf(limit - 2 * limitTolerance(limit));
  let on = placeOf(limit);
  while (on - off > 1n) {
    const middle = (on + off) / 2n;
    if (isOn(doubleAt(middle), limit)) on = middle;
    else off = middle;
  }
  return doubleAt(on);
}
