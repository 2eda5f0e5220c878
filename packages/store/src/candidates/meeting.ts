import type { CandidateQuery } from '@tiegel/contract';
import type { CandidateArrays } from './candidateArrays.ts';
import type { CandidateSet } from './candidateSet.ts';

/** The filters of a query as a text, the same for the same filters; null where it has none. */
export function filtersOf({ ranges, has, without, front }: CandidateQuery): string | null {
  if (ranges.length + has.length + without.length === 0 && front === undefined) return null;
  return JSON.stringify([ranges, has, without, front]);
}

/**
 * 1 for each candidate, by rank less one, that meets the filters of a query. In steps, a filter
 * each: their columns may have to be read.
 */
export function* meeting(
  arrays: CandidateArrays,
  set: CandidateSet,
  query: CandidateQuery,
): Generator<number, Uint8Array> {
  const { ranges, has, without, front = false } = query;
  const name = `(meeting ${filtersOf(query)})`;
  const known = arrays.held(set, name);
  if (known) return known as Uint8Array;
  const mask = new Uint8Array(set.kept).fill(1);
  // A candidate without a value lies in no range.
  for (const { quantity, min = -Infinity, max = Infinity } of ranges) {
    within(arrays.values(set, quantity), Float64Array.of(min, max), mask);
    yield 0;
  }
  for (const symbol of has) keepWhere(arrays.presence(set, symbol), 1, mask);
  for (const symbol of without) keepWhere(arrays.presence(set, symbol), 0, mask);
  if (front) keepWhere(arrays.front(set), 1, mask);
  arrays.hold(set, name, mask);
  return mask;
}

/**
 * Without a branch: which candidates meet a filter cannot be foretold, and the loop took four times
 * as long with one. The ends come in an array: as parameters they would be boxed numbers.
 */
function within(values: Float64Array, ends: Float64Array, mask: Uint8Array): void {
  const least = ends[0]!;
  const most = ends[1]!;
  for (let at = 0; at < mask.length; at += 1) {
    mask[at] = mask[at]! & Number(values[at]! >= least) & Number(values[at]! <= most);
  }
}

function keepWhere(flags: Uint8Array, wanted: 0 | 1, mask: Uint8Array): void {
  for (let at = 0; at < mask.length; at += 1) mask[at] = mask[at]! & Number(flags[at] === wanted);
}
