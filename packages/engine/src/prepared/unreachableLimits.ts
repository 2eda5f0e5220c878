import type { Prepared } from './prepare.ts';

/** A limit that no grid point meets, with the bounds that prove it, in the quantity's unit. */
export interface UnreachableLimit {
  /** Place among the specification's limits. */
  index: number;
  /** Every value on the grid lies between these. */
  low: number;
  high: number;
}

/**
 * The limits that no point of the grid can meet, each by itself, as far as bounds prove it. Of a
 * quantity that has no value anywhere nothing is said. Asked of a grid that has points.
 */
export function unreachableLimits({ limits, bounds }: Prepared): UnreachableLimit[] {
  return limits.flatMap(({ output, least, greatest }, index) => {
    const { low, high, missing } = bounds[output]!;
    if (missing === 'always' || (low <= greatest && high >= least)) return [];
    return [{ index, low, high }];
  });
}
