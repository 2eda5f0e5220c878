/**
 * The integer grid of a search. Amounts are parts: whole numbers whose sum is `total`, the
 * number of steps in 100 at.%. Arrays follow `symbols`.
 */
export interface Grid {
  /** The effective pool, pool and require without forbid, in alphabetical order. */
  symbols: readonly string[];
  required: readonly boolean[];
  /** How many elements a system may have, as far as the bounds leave room for it. */
  components: { min: number; max: number };
  /**
   * Parts that make the whole. Null for the equimolar grid: as many as the system has elements,
   * one part each, so that a system is one point.
   */
  total: number | null;
  /** Least and most parts of an element that is present; the least is above the most where no step lies between the bounds. */
  lowest: readonly number[];
  highest: readonly number[];
  /**
   * True when a chunk must hold its systems whole: the best of each system are cut to the best
   * 100,000 systems, and parts of a system that are cut before they meet would lose points.
   */
  wholeSystems: boolean;
}

/** Parts that make the whole in a system of so many elements. */
export function wholeOf(grid: Grid, elements: number): number {
  return grid.total ?? elements;
}
