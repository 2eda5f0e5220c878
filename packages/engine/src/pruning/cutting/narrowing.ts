import { LEAST } from '../bounds/affine.ts';
import { type Box, tighten } from '../boxes/box.ts';
import { sortPlaces, startOrder } from '../boxes/greedy.ts';
import type { LineConditions } from './lineConditions.ts';

/** Makes boxes narrower by what their points must meet. */
export interface Narrowing {
  /**
   * A part of the box in which all of its points lie that meet the conditions, which are changed: null
   * where it is clear that there is none, and the box itself where nothing can be cut off.
   */
  narrowed(box: Box, conditions: LineConditions): Box | null;
}

/** Far more, of the size of its terms, than a sum of conditions is rounded. */
const ROUNDING = 2 ** -44;
/** What is rounded on the way to an amount must not cut off a whole one. */
const CROSSING = 1e-9;
/** A box is cut by all conditions so many times at most. */
const mostRounds = 3;
/** So many conditions are put together at most, and so many shares of each are tried. */
const mostJoined = 2;
const mostShares = 6;

/**
 * With y the parts above the lower corner, a condition C(y) = c + Σ sᵢyᵢ ≤ 0 and y* its least point
 * over the box, found greedily, there is an m such that sᵢ < m only where y* is at its upper bound
 * and sᵢ > m only where it is 0. From Σ y = Σ y* follows
 *   C(y) = C(y*) + Σ (sᵢ − m)(yᵢ − yᵢ*),
 * in which no term is negative. So |yᵢ − yᵢ*| is at most −C(y*) / |sᵢ − m|, and no point is left
 * where C(y*) > 0.
 *
 * Two conditions that both can be met need not be met together, as those of a thin layer next to the
 * box: then C + λD ≤ 0 says more than each of them, with the λ ≥ 0 for which its least value is greatest.
 */
export function narrowing(mostElements: number): Narrowing {
  const order = new Int32Array(mostElements);
  const width = new Int32Array(mostElements);
  const leastPoint = new Int32Array(mostElements);
  const corner = new Int32Array(mostElements);
  const trial = new Float64Array(mostElements);
  /** Conditions put together: C, its least value, and the size of what it was added up from. */
  const slopes = new Float64Array(mostElements);
  let constant = 0;
  let size = 0;
  let least = 0;
  /** The place in the order of the element that takes the last of what there is. */
  let marginal = 0;

  let box: Box = { low: [], high: [], total: 0 };
  let conditions: LineConditions;
  let elements = 0;
  let rest = 0;

  /** Finds the least point of a function; returns the value there. */
  function leastOf(of: Float64Array, start: number): number {
    sortPlaces(of, 0, order, 0, elements);
    let left = rest;
    let sum = start;
    marginal = 0;
    for (let place = 0; place < elements; place += 1) {
      const at = order[place]!;
      const given = Math.min(width[at]!, left);
      leastPoint[at] = given;
      if (given > 0) marginal = place;
      sum += given * of[at]!;
      left -= given;
    }
    return sum;
  }

  function valueAtLeastPoint(one: number): number {
    const of = conditions.slopes[one]!;
    let sum = conditions.constants[one]!;
    for (let at = 0; at < elements; at += 1) sum += of[at]! * leastPoint[at]!;
    return sum;
  }

  function sizeOf(one: number): number {
    const of = conditions.slopes[one]!;
    let sum = conditions.sizes[one]!;
    for (let at = 0; at < elements; at += 1) sum += Math.abs(of[at]!) * width[at]!;
    return sum;
  }

  function startWith(one: number): void {
    slopes.set(conditions.slopes[one]!);
    constant = conditions.constants[one]!;
    size = sizeOf(one);
    least = leastOf(slopes, constant);
  }

  /** Adds λ times a condition that is not met at the least point. */
  function join(one: number): void {
    const of = conditions.slopes[one]!;
    const start = conditions.constants[one]!;
    // The least value is concave in λ, and its slope there is the value of D at the least point.
    let [from, atFrom, slopeFrom] = [0, least, valueAtLeastPoint(one)];
    let [until, atUntil, slopeUntil] = [Number.POSITIVE_INFINITY, 0, 0];
    let share = Math.max(-least, roundingOf(size)) / slopeFrom;
    let [best, greatest] = [0, least];
    for (let turn = 0; turn < mostShares && share > from && share < until; turn += 1) {
      for (let at = 0; at < elements; at += 1) trial[at] = slopes[at]! + share * of[at]!;
      const value = leastOf(trial, constant + share * start);
      const slope = valueAtLeastPoint(one);
      if (value > greatest) [best, greatest] = [share, value];
      if (slope > 0) [from, atFrom, slopeFrom] = [share, value, slope];
      else [until, atUntil, slopeUntil] = [share, value, slope];
      // Where the tangents at both ends meet.
      share =
        until === Number.POSITIVE_INFINITY
          ? 4 * share
          : (atUntil - atFrom + slopeFrom * from - slopeUntil * until) / (slopeFrom - slopeUntil);
    }
    for (let at = 0; at < elements; at += 1) slopes[at] = slopes[at]! + best * of[at]!;
    constant += best * start;
    size += best * sizeOf(one);
    least = leastOf(slopes, constant);
  }

  /** The condition that is furthest from being met at the least point; −1 where all are met. */
  function worstAtLeastPoint(): number {
    let [worst, most] = [-1, 0];
    for (let one = 0; one < conditions.count; one += 1) {
      const value = valueAtLeastPoint(one);
      if (value > most && value > roundingOf(sizeOf(one))) [worst, most] = [one, value];
    }
    return worst;
  }

  /** Cuts bounds by the condition at hand; whether any changed. */
  function cut(): boolean {
    const { low, high } = box;
    const room = roundingOf(size) - least;
    const m = slopes[order[marginal]!]!;
    let changed = false;
    for (let place = 0; place < elements; place += 1) {
      const at = order[place]!;
      const given = leastPoint[at]!;
      // The element that m is the slope of gives to the next one, and takes from the one before.
      const above = slopes[at]! - (place === marginal && place > 0 ? slopes[order[place - 1]!]! : m);
      const below =
        (place === marginal && place + 1 < elements ? slopes[order[place + 1]!]! : m) - slopes[at]!;
      if (above > 0 && given < width[at]!) {
        const most = Math.floor(given + room / above + CROSSING);
        if (most < width[at]!) {
          high[at] = low[at]! + most;
          changed = true;
        }
      }
      if (below > 0 && given > 0) {
        const fewest = Math.ceil(given - room / below - CROSSING);
        if (fewest > 0) {
          low[at] = low[at]! + fewest;
          changed = true;
        }
      }
    }
    return changed;
  }

  /** Turns to the box as it is now; conditions are counted from its lower corner. False where it has no point. */
  function enter(): boolean {
    const { low, high, total } = box;
    if (!tighten(box)) return false;
    rest = total;
    for (let at = 0; at < elements; at += 1) {
      rest -= low[at]!;
      width[at] = high[at]! - low[at]!;
    }
    for (let one = 0; one < conditions.count; one += 1) {
      const of = conditions.slopes[one]!;
      let moved = 0;
      for (let at = 0; at < elements; at += 1) moved += of[at]! * (low[at]! - corner[at]!);
      conditions.constants[one] = conditions.constants[one]! + moved;
      conditions.sizes[one] = conditions.sizes[one]! + Math.abs(moved);
    }
    for (let at = 0; at < elements; at += 1) corner[at] = low[at]!;
    return true;
  }

  /** Cuts the box by one condition, and by it and others: whether it got narrower, null where no point is left. */
  function cutBy(one: number): boolean | null {
    startWith(one);
    for (let joined = 1; ; joined += 1) {
      if (least > roundingOf(size)) return null;
      if (cut()) return enter() ? true : null;
      const worst = joined < mostJoined ? worstAtLeastPoint() : -1;
      if (worst < 0) return false;
      const before = least;
      join(worst);
      if (!(least > before)) return false;
    }
  }

  return {
    narrowed(whole, given) {
      box = { low: whole.low.slice(), high: whole.high.slice(), total: whole.total };
      conditions = given;
      if (elements !== box.low.length) startOrder(order, 0, box.low.length);
      elements = box.low.length;
      for (let at = 0; at < elements; at += 1) corner[at] = box.low[at]!;
      enter();
      let isNarrower = false;
      for (let round = 0, again = true; again && round < mostRounds; round += 1) {
        again = false;
        for (let one = 0; one < conditions.count; one += 1) {
          const changed = cutBy(one);
          if (changed === null) return null;
          if (changed) again = true;
        }
        if (again) isNarrower = true;
      }
      return isNarrower ? box : whole;
    },
  };
}

/** Far more than a sum of terms of this size altogether is rounded. */
const roundingOf = (size: number) => ROUNDING * size + LEAST;
