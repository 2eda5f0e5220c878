import type { CandidateQuery } from '@tiegel/contract';
import type { CandidateArrays } from './candidateArrays.ts';
import type { CandidateSet } from './candidateSet.ts';
import { meeting } from './meeting.ts';

/** A search's candidates in a query's order, filters aside: a place for each, from 0, and the ranks there. */
export interface CandidateLine {
  /** The first place that is `behind` places of candidates that meet the filters, counted from a place on. */
  skip(from: number, behind: number): number;
  /** Places and ranks of up to so many candidates that meet the filters, from a place on. */
  take(from: number, most: number): { place: number; rank: number }[];
}

/** Makes ready what a line needs, in steps of some ten milliseconds: see candidateLine. */
export function* lineSteps(
  arrays: CandidateArrays,
  set: CandidateSet,
  query: CandidateQuery,
): Generator<void, CandidateLine> {
  const mask = yield* meeting(arrays, set, query);
  yield;
  if (query.order === 'rank') return byRank(set, query.direction, mask);
  const wholeOrder = () => arrays.order(set, query.order, query.direction);
  if (mask !== null) return byOrder(yield* wholeOrder(), mask);
  // An order that was made need not be read whole for a page.
  if (arrays.stretch(set, query.order, query.direction, 0, 1) === null) yield* wholeOrder();
  return unfiltered(arrays, set, query);
}

/** Ranks less one from the best on, or from the last. */
function byRank(set: CandidateSet, direction: 'asc' | 'desc', mask: Uint8Array | null): CandidateLine {
  const at = direction === 'asc' ? (place: number) => place : (place: number) => set.kept - 1 - place;
  const meets = (place: number) => mask === null || mask[at(place)] === 1;
  return {
    skip(from, behind) {
      if (mask === null) return from + behind;
      let place = from;
      for (let left = behind; place < set.kept; place += 1) if (meets(place) && --left < 0) break;
      return place;
    },
    take(from, most) {
      const found: { place: number; rank: number }[] = [];
      for (let place = from; place < set.kept && found.length < most; place += 1) {
        if (meets(place)) found.push({ place, rank: at(place) + 1 });
      }
      return found;
    },
  };
}

/** Plain loops over the arrays: with a function for each place a walk over 10⁶ took three times as long. */
function byOrder(order: Uint32Array, mask: Uint8Array): CandidateLine {
  function next(from: number): number {
    let place = from;
    while (place < order.length && mask[order[place]!] === 0) place += 1;
    return place;
  }
  return {
    skip(from, behind) {
      let left = behind;
      for (let place = from; place < order.length; place += 1) {
        left -= mask[order[place]!]!;
        if (left < 0) return place;
      }
      return order.length;
    },
    take(from, most) {
      const found: { place: number; rank: number }[] = [];
      for (let place = next(from); place < order.length && found.length < most; place = next(place + 1)) {
        found.push({ place, rank: order[place]! + 1 });
      }
      return found;
    },
  };
}

function unfiltered(
  arrays: CandidateArrays,
  set: CandidateSet,
  { order, direction }: CandidateQuery,
): CandidateLine {
  return {
    skip: (from, behind) => from + behind,
    take(from, most) {
      const high = Math.min(set.kept, from + most);
      const part = arrays.stretch(set, order, direction, from, high) ?? new Uint32Array();
      return Array.from(part, (at, index) => ({ place: from + index, rank: at + 1 }));
    },
  };
}
