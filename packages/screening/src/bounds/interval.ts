/** Whether a value lacks (is NaN inside a computation): at no point of a region, perhaps at some, at every one. */
export type Missing = 'never' | 'sometimes' | 'always';

/**
 * What a step may be over a region: every value that it has there lies between `low` and `high`,
 * inclusive. Ends may be infinite. Where the value lacks at every point the interval is empty,
 * low +Infinity and high −Infinity, so that a hull with it changes nothing.
 */
export interface Interval {
  low: number;
  high: number;
  missing: Missing;
}

/** An interval to be written into. */
export function emptyInterval(): Interval {
  return { low: Number.POSITIVE_INFINITY, high: Number.NEGATIVE_INFINITY, missing: 'always' };
}

/** Writes an interval. No number between the ends means: no value at any point. */
export function setInterval(into: Interval, low: number, high: number, missing: Missing): void {
  const empty = missing === 'always' || !(low <= high);
  into.low = empty ? Number.POSITIVE_INFINITY : low;
  into.high = empty ? Number.NEGATIVE_INFINITY : high;
  into.missing = empty ? 'always' : missing;
}

/** Whether the value lacks, where it needs two others. */
export function eitherMissing(one: Missing, other: Missing): Missing {
  if (one === 'always' || other === 'always') return 'always';
  return one === 'sometimes' || other === 'sometimes' ? 'sometimes' : 'never';
}
