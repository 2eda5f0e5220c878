import type { SystemBounder } from '../bounds/systemBounder.ts';
import type { Box } from '../boxes/box.ts';
import { type LevelFunctions, levelFunctions, prepareLevels } from './levelFunctions.ts';

/** Gets the amounts of a point that must be looked at, in the order of the system's elements; overwritten afterwards. */
type Look = (parts: Int32Array) => void;

/** What an affine function must be at most 0 for. */
type Purpose = 'pass' | 'passSurely' | 'keep';

/**
 * Goes through the points of a box line by line, and leaves only those to be looked at that
 * affine functions do not decide. Two amounts vary along a line, one up and the other down, so
 * that each function is at most 0 on one side of its crossing.
 *
 * A point passes only if all functions of the first purpose are at most 0 there; it passes surely
 * if all of the second are; it can be kept only if all of the third are. Rounding is allowed for:
 * the functions by their own, crossings by a billionth of a part.
 */
export interface Sieve {
  clear(): void;
  /** No point passes surely. */
  doubt(): void;
  keepNothing(): void;
  /** An output of the box at hand is at most (side 1) or at least (−1) a value for a purpose. */
  add(purpose: Purpose, bounder: SystemBounder, output: number, side: 1 | -1, value: number): void;
  /**
   * Goes through the box. Returns how many points pass surely and were not to be looked at, with
   * `counting`; without, only what can be kept is looked at.
   */
  go(box: Box, counting: boolean, look: Look): number;
}

const CROSSING = 1e-9;

export function sieve(mostElements: number, mostFunctions: number): Sieve {
  const pass = levelFunctions(mostElements, mostFunctions);
  const sure = levelFunctions(mostElements, mostFunctions);
  const keep = levelFunctions(mostElements, mostFunctions);
  const byPurpose = { pass, passSurely: sure, keep };
  const order = new Int32Array(mostElements);
  const parts = new Int32Array(mostElements);
  const roomBehind = new Int32Array(mostElements + 1);
  let doubtful = false;
  let keepsNothing = false;

  // The box at hand and what is wanted of it.
  let low: readonly number[] = [];
  let high: readonly number[] = [];
  let elements = 0;
  let counting = false;
  let look: Look = () => {};
  let from = 0;
  let until = 0;

  /** Cuts [from, until] to where the functions are at most 0. */
  function narrow(
    { count, sums, inverse, ofLast }: LevelFunctions,
    level: number,
    rest: number,
    margin: number,
  ): void {
    const start = level * mostFunctions;
    for (let one = 0; one < count; one += 1) {
      const value = sums[start + one]! + ofLast[one]! * rest;
      const crossing = -value * inverse[one]!;
      if (inverse[one]! > 0) {
        const end = Math.floor(crossing + margin);
        if (end < until) until = end;
      } else if (inverse[one]! < 0) {
        const begin = Math.ceil(crossing - margin);
        if (begin > from) from = begin;
      } else if (value > 0) {
        until = from - 1;
      }
      if (until < from) return;
    }
  }

  function lookAt(first: number, last: number, rest: number): void {
    const [risen, fallen] = [order[elements - 2]!, order[elements - 1]!];
    for (let at = first; at <= last; at += 1) {
      parts[risen] = low[risen]! + at;
      parts[fallen] = low[fallen]! + rest - at;
      look(parts);
    }
  }

  /** The points of a line, whose two elements share out what is left. */
  function line(level: number, rest: number): number {
    const widthOfLast = high[order[elements - 1]!]! - low[order[elements - 1]!]!;
    const widthOfOther = high[order[elements - 2]!]! - low[order[elements - 2]!]!;
    from = Math.max(0, rest - widthOfLast);
    until = Math.min(widthOfOther, rest);
    narrow(pass, level, rest, CROSSING);
    if (until < from) return 0;
    const [first, last] = [from, until];
    if (keepsNothing) until = from - 1;
    else narrow(keep, level, rest, CROSSING);
    if (!counting) {
      if (from <= until) lookAt(from, until, rest);
      return 0;
    }
    const [firstKept, lastKept] = from <= until ? [from, until] : [1, 0];
    from = first;
    until = last;
    if (doubtful) until = from - 1;
    else narrow(sure, level, rest, -CROSSING);
    if (until < from) {
      lookAt(first, last, rest);
      return 0;
    }
    return countLine(first, last, from, until, firstKept, lastKept, rest);
  }

  /** Of a line from `first` to `last` counts what passes surely and cannot be kept, and looks at the rest. */
  function countLine(
    first: number,
    last: number,
    sureFrom: number,
    sureUntil: number,
    keptFrom: number,
    keptUntil: number,
    rest: number,
  ): number {
    if (first < sureFrom) lookAt(first, sureFrom - 1, rest);
    if (sureUntil < last) lookAt(sureUntil + 1, last, rest);
    const begin = Math.max(sureFrom, keptFrom);
    const end = Math.min(sureUntil, keptUntil);
    if (begin > end) return sureUntil - sureFrom + 1;
    lookAt(begin, end, rest);
    return sureUntil - sureFrom - (end - begin);
  }

  /** Adds an element's amount to the sums; whether it is clear that some function stays above 0 whatever comes. */
  function advance(
    of: LevelFunctions,
    level: number,
    element: number,
    amount: number,
    rest: number,
  ): boolean {
    const { count, sums, slopes, tailSlopes, tailConstants } = of;
    const here = level * mostFunctions;
    const next = here + mostFunctions;
    let above = false;
    for (let one = 0; one < count; one += 1) {
      const sum = sums[here + one]! + slopes[one * mostElements + element]! * amount;
      sums[next + one] = sum;
      if (sum + tailSlopes[next + one]! * rest + tailConstants[next + one]! > 0) above = true;
    }
    return above;
  }

  function descend(level: number, rest: number): number {
    if (level === elements - 2) return line(level, rest);
    const element = order[level]!;
    const least = Math.max(0, rest - roomBehind[level + 1]!);
    const most = Math.min(high[element]! - low[element]!, rest);
    let counted = 0;
    for (let amount = least; amount <= most; amount += 1) {
      const left = rest - amount;
      if (advance(pass, level, element, amount, left)) continue;
      const unkept = keepsNothing || advance(keep, level, element, amount, left);
      if (counting) advance(sure, level, element, amount, left);
      else if (unkept) continue;
      parts[element] = low[element]! + amount;
      counted += descend(level + 1, left);
    }
    return counted;
  }

  return {
    clear() {
      pass.count = 0;
      sure.count = 0;
      keep.count = 0;
      doubtful = false;
      keepsNothing = false;
    },
    doubt() {
      doubtful = true;
    },
    keepNothing() {
      keepsNothing = true;
    },
    add(purpose, bounder, output, side, value) {
      const of = byPurpose[purpose];
      const start = of.count * mostElements;
      if (purpose !== 'passSurely') {
        of.constants[of.count] = bounder.condition(output, side, value, of.slopes, start);
      } else {
        // The function on the far side meets it, and so does every value.
        of.constants[of.count] = side * (bounder.affine(output, side === -1, of.slopes, start) - value);
        if (side === -1) {
          for (let at = start; at < start + mostElements; at += 1) of.slopes[at] = -of.slopes[at]!;
        }
      }
      of.count += 1;
    },
    go(box, countsToo, looker) {
      low = box.low;
      high = box.high;
      elements = low.length;
      counting = countsToo;
      look = looker;
      if (elements === 1) {
        parts[0] = low[0]!;
        look(parts);
        return 0;
      }
      let rest = box.total;
      for (let at = 0; at < elements; at += 1) rest -= low[at]!;
      orderByWidth(order, box);
      roomBehind[elements] = 0;
      for (let at = elements - 1; at >= 0; at -= 1) {
        roomBehind[at] = roomBehind[at + 1]! + high[order[at]!]! - low[order[at]!]!;
      }
      prepareLevels(pass, order, low, high);
      prepareLevels(sure, order, low, high);
      prepareLevels(keep, order, low, high);
      return descend(0, rest);
    },
  };
}

/** Narrow elements first, so that lines are long. */
function orderByWidth(places: Int32Array, box: Box): void {
  for (let at = 0; at < box.low.length; at += 1) {
    const width = box.high[at]! - box.low[at]!;
    let place = at;
    while (place > 0 && box.high[places[place - 1]!]! - box.low[places[place - 1]!]! > width) {
      places[place] = places[place - 1]!;
      place -= 1;
    }
    places[place] = at;
  }
}
