import type { Box } from '../boxes/box.ts';

/**
 * What P of a form (without its scale) is at least and at most over boxes of one system after
 * another: proven ends, exact for sums of degree 1 whose numbers are whole.
 */
export interface FormBounds {
  /** Turns to a system: places in the pool, ascending. */
  enter(members: readonly number[]): void;
  least(box: Box): number;
  greatest(box: Box): number;
  /**
   * P somewhere within the box, up to the margin that the ends have: cheaper than they are, it often tells that
   * one of them need not be known. NaN where it would not be cheaper.
   */
  within(box: Box): number;
}
