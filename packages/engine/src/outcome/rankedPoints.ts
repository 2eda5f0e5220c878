import { type RankedPoints, numbersPerRankedPoint as stride } from '@tiegel/contract/terms';
import { keyOf, type Ranking } from '../prepared/ranking.ts';

/** Below 0 when the point that starts at `left` of one list is ranked before that at `right` of another. */
export function compareRanked(
  one: RankedPoints,
  left: number,
  other: RankedPoints,
  right: number,
  prefer: Ranking['prefer'],
): number {
  const keyLeft = keyOf(one[left]!, prefer);
  const keyRight = keyOf(other[right]!, prefer);
  if (keyLeft !== keyRight) return keyLeft < keyRight ? -1 : 1;
  return one[left + 1]! - other[right + 1]! || one[left + 2]! - other[right + 2]!;
}

/**
 * What mergeRanked gives, in the place of the first list, which is gone then: of a million points
 * it is 24 MB, and no second one is made beside it.
 */
export function addRanked(
  one: RankedPoints,
  other: RankedPoints,
  keep: number,
  prefer: Ranking['prefer'],
): RankedPoints {
  const { buffer } = one;
  if (!(buffer instanceof ArrayBuffer) || buffer.byteLength !== one.byteLength) {
    return mergeRanked(one, other, keep, prefer);
  }
  const length = Math.min(stride * keep, one.length + other.length);
  let left = one.length;
  let right = other.length;
  // What is too much is the worst of both.
  while (left + right > length) {
    const dropsOne =
      right === 0 || (left > 0 && compareRanked(one, left - stride, other, right - stride, prefer) > 0);
    if (dropsOne) left -= stride;
    else right -= stride;
  }
  const merged = new Float64Array(buffer.transfer(length * one.BYTES_PER_ELEMENT));
  // From the end on, so that nothing is written where something is still to be read.
  for (let at = length - stride; right > 0; at -= stride) {
    const fromOne = left > 0 && compareRanked(merged, left - stride, other, right - stride, prefer) > 0;
    const source = fromOne ? merged : other;
    const start = (fromOne ? left : right) - stride;
    merged[at] = source[start]!;
    merged[at + 1] = source[start + 1]!;
    merged[at + 2] = source[start + 2]!;
    if (fromOne) left -= stride;
    else right -= stride;
  }
  return merged;
}

/** The best `keep` points of two lists that have none in common, best first. */
export function mergeRanked(
  one: RankedPoints,
  other: RankedPoints,
  keep: number,
  prefer: Ranking['prefer'],
): RankedPoints {
  const length = Math.min(stride * keep, one.length + other.length);
  const merged = new Float64Array(length);
  let left = 0;
  let right = 0;
  for (let at = 0; at < length; at += stride) {
    const fromOne =
      right >= other.length || (left < one.length && compareRanked(one, left, other, right, prefer) < 0);
    const source = fromOne ? one : other;
    const start = fromOne ? left : right;
    merged[at] = source[start]!;
    merged[at + 1] = source[start + 1]!;
    merged[at + 2] = source[start + 2]!;
    if (fromOne) left += stride;
    else right += stride;
  }
  return merged;
}
