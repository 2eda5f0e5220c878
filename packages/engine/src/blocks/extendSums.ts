import type { BlockLevel } from './pointBlock.ts';

/**
 * The sums of one level from those of the level before: sums[at] = before[parent] + weight · parts.
 *
 * The weight comes as a place in an array: read before the loop it is a plain double in it. As a
 * parameter it would be a boxed number that compiled code unboxes at every turn, which makes such
 * a loop two to three times slower.
 */
export function extendSums(
  before: Float64Array,
  { count, parent, parts }: BlockLevel,
  weights: Float64Array,
  place: number,
  sums: Float64Array,
): void {
  const weight = weights[place]!;
  for (let at = 0; at < count; at += 1) sums[at] = before[parent[at]!]! + weight * parts[at]!;
}
