import type { CandidateQuery } from '@tiegel/contract';
import type { CandidateArrays } from './candidateArrays.ts';
import type { CandidateSet } from './candidateSet.ts';

/**
 * 1 for each candidate, by rank less one, that meets the filters of a query; null where it has
 * none. In steps, a filter each: their columns may have to be read.
 */
export function* meeting(
  arrays: CandidateArrays,
  set: CandidateSet,
  query: CandidateQuery,
): Generator<void, Uint8Array | null> {
  const { ranges, has, without, front = false } = query;
  if (ranges.length + has.length + without.length === 0 && !front) return null;
  const name = `(meeting ${JSON.stringify([ranges, has, without, front])})`;
  const known = arrays.mask(set, name);
  if (known) return known;
  const mask = new Uint8Array(set.kept).fill(1);
  // A candidate without a value lies in no range.
  for (const { quantity, min = -Infinity, max = Infinity } of ranges) {
    within(arrays.values(set, quantity), Float64Array.of(min, max), mask);
    yield;
  }
  for (const symbol of has) keepWhere(arrays.presence(set, symbol), 1, mask);
  for (const symbol of without) keepWhere(arrays.presence(set, symbol), 0, mask);
  if (front) keepWhere(arrays.front(set), 1, mask);
  arrays.keepMask(set, name, mask);
  return mask;
}

/** The ends come in an array: as parameters they would be boxed numbers, and the loop twice as slow. */
function within(values: Float64Array, ends: Float64Array, mask: Uint8Array): void {
  const least = ends[0]!;
  const most = ends[1]!;
  for (let at = 0; at < mask.length; at += 1)
    if (!(values[at]! >= least && values[at]! <= most)) mask[at] = 0;
}

function keepWhere(flags: Uint8Array, wanted: 0 | 1, mask: Uint8Array): void {
  for (let at = 0; at < mask.length; at += 1) if (flags[at] !== wanted) mask[at] = 0;
}
