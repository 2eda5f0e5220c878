import type { CandidateQuery } from '@tiegel/contract';
import type { CandidateArrays } from './candidateArrays.ts';
import type { CandidateSet } from './candidateSet.ts';
import { filtersOf, meeting } from './meeting.ts';

/** A search's candidates in a query's order: a place for each, from 0, whether or not it meets the filters. */
export interface CandidateLine {
  /** The place of the candidate before which so many meet the filters. */
  placeAt(behind: number): number;
  /** The ranks of up to so many candidates that meet the filters, from a place on, and the place of the last one if others follow. */
  take(from: number, most: number): { ranks: number[]; last: number | null };
}

/** What stands on a page: the ranks, and the place of the last one if others follow. */
export type PageRanks = ReturnType<CandidateLine['take']>;

/** So many places are gone through one by one for a page before all are. */
const shortWalk = 16_384;

/** The ranks of a query's page, in steps of some ten milliseconds. `start`: the place from which on it is read, unless it begins at a row number. */
export function* pageSteps(
  arrays: CandidateArrays,
  set: CandidateSet,
  query: CandidateQuery,
  start: number,
): Generator<number, PageRanks> {
  const { order, direction, at, limit } = query;
  if (filtersOf(query) !== null && !at) {
    const mask = yield* meeting(arrays, set, query);
    const end = Math.min(set.kept, start + shortWalk);
    const near =
      order === 'rank'
        ? Uint32Array.from(ranksFrom(set, direction, start, end), (rank) => rank - 1)
        : arrays.stretch(set, order, direction, start, end);
    const found = near && walked(near, mask, start, limit);
    if (found) return found;
  }
  const line = yield* lineSteps(arrays, set, query);
  return line.take(at ? line.placeAt(at) : start, limit);
}

/** Whether a page of the query is read at once: nothing is filtered, and its order is made. */
export function isAtHand(arrays: CandidateArrays, set: CandidateSet, query: CandidateQuery): boolean {
  const { order, direction } = query;
  return filtersOf(query) === null && (order === 'rank' || arrays.isMade(set, order, direction));
}

/** The page that begins in a stretch of the line, where it ends there too and one more candidate follows; else null. */
function walked(near: Uint32Array, mask: Uint8Array, start: number, limit: number): PageRanks | null {
  const ranks: number[] = [];
  let last = start;
  for (let index = 0; index < near.length; index += 1) {
    if (mask[near[index]!] === 0) continue;
    if (ranks.length === limit) return { ranks, last };
    ranks.push(near[index]! + 1);
    last = start + index;
  }
  return null;
}

/** All of a query's line, in steps of some ten milliseconds. */
export function* lineSteps(
  arrays: CandidateArrays,
  set: CandidateSet,
  query: CandidateQuery,
): Generator<number, CandidateLine> {
  const { order, direction } = query;
  const filters = filtersOf(query);
  if (filters !== null) return filteredLine(yield* filteredPlaces(arrays, set, query, filters));
  if (order === 'rank') return wholeLine(set.kept, (low, high) => ranksFrom(set, direction, low, high));
  // An order that is stored need not be read whole for a page. Any other is kept as long as the line:
  // meanwhile it may be let go from memory, and a disk without room has not taken it.
  const whole = arrays.isStored(set, order, direction) ? null : yield* arrays.order(set, order, direction);
  return wholeLine(set.kept, (low, high) => {
    const places = whole?.subarray(low, high) ?? arrays.stretch(set, order, direction, low, high);
    if (places === null) throw new Error(`the order by ${order} is gone while it is read`);
    return Array.from(places, (at) => at + 1);
  });
}

function wholeLine(kept: number, ranksIn: (low: number, high: number) => number[]): CandidateLine {
  return {
    placeAt: (behind) => behind,
    take(from, most) {
      const end = Math.min(kept, from + most);
      return { ranks: from < end ? ranksIn(from, end) : [], last: end < kept ? end - 1 : null };
    },
  };
}

/** Ranks from the best on, or from the last. */
function ranksFrom(
  { kept }: CandidateSet,
  direction: CandidateQuery['direction'],
  low: number,
  high: number,
): number[] {
  return Array.from({ length: high - low }, (_, index) =>
    direction === 'asc' ? low + index + 1 : kept - low - index,
  );
}

/**
 * Where those that meet the filters stand: their places in rising order, then their ranks less one.
 * Once that is known, a page is a stretch of it, however far inside and however few meet the filters.
 */
function* filteredPlaces(
  arrays: CandidateArrays,
  set: CandidateSet,
  query: CandidateQuery,
  filters: string,
): Generator<number, Uint32Array> {
  const { order, direction } = query;
  const name = `(line ${order} ${direction} ${filters})`;
  const known = arrays.held(set, name);
  if (known) return known as Uint32Array;
  const mask = yield* meeting(arrays, set, query);
  const ordered = order === 'rank' ? null : yield* arrays.order(set, order, direction);
  yield 0;
  const places = ordered === null ? placesByRank(mask, direction) : placesIn(ordered, mask);
  arrays.hold(set, name, places);
  return places;
}

function countOf(mask: Uint8Array): number {
  let count = 0;
  for (let at = 0; at < mask.length; at += 1) count += mask[at]!;
  return count;
}

/** Each place is written down and counts if it meets the filters: with a branch instead the loop took four times as long. */
function placesIn(order: Uint32Array, mask: Uint8Array): Uint32Array {
  const count = countOf(mask);
  // One more, for the last places are written down without counting.
  const found = new Uint32Array(2 * count + 1);
  let end = 0;
  for (let place = 0; place < order.length; place += 1) {
    found[end] = place;
    end += mask[order[place]!]!;
  }
  for (let index = 0; index < count; index += 1) found[count + index] = order[found[index]!]!;
  return found.subarray(0, 2 * count);
}

function placesByRank(mask: Uint8Array, direction: CandidateQuery['direction']): Uint32Array {
  const count = countOf(mask);
  const found = new Uint32Array(2 * count + 1);
  const last = mask.length - 1;
  const [first, step] = direction === 'asc' ? [0, 1] : [last, -1];
  let end = 0;
  for (let place = 0, at = first; place <= last; place += 1, at += step) {
    found[end] = place;
    end += mask[at]!;
  }
  for (let index = 0; index < count; index += 1) found[count + index] = first + step * found[index]!;
  return found.subarray(0, 2 * count);
}

function filteredLine(found: Uint32Array): CandidateLine {
  const count = found.length / 2;
  return {
    placeAt: (behind) => (behind < count ? found[behind]! : Number.POSITIVE_INFINITY),
    take(from, most) {
      const first = firstFrom(found, count, from);
      const end = Math.min(count, first + most);
      const ranks = Array.from(found.subarray(count + first, count + end), (at) => at + 1);
      return { ranks, last: end < count ? found[end - 1]! : null };
    },
  };
}

/** The index of the first of so many rising numbers that is not below a number. */
function firstFrom(rising: Uint32Array, count: number, least: number): number {
  let [low, high] = [0, count];
  while (low < high) {
    const middle = (low + high) >>> 1;
    if (rising[middle]! < least) low = middle + 1;
    else high = middle;
  }
  return low;
}
