import type { Prepared } from './prepare.ts';

/** A limit that no grid point meets, with the bounds that prove it, in the quantity's unit. */
export interface UnreachableLimit {
  /** Place among the specification's limits. */
  index: number;
  low: number;
  high: number;
}

/** The limits that are proven to be out of reach of the whole grid; none where bounds prove nothing. */
export function unreachableLimits(_prepared: Prepared): UnreachableLimit[] {
  return [];
}
