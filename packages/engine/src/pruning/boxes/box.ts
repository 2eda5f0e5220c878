import { windowSums } from '../../grid/windowSums.ts';

/**
 * A part of one system's grid: every element between bounds in parts, all amounts together the
 * whole. Arrays follow the system's elements. Bounds are tight: each of them is reached by some
 * point of the box (see `tightBox`).
 */
export interface Box {
  low: number[];
  high: number[];
  total: number;
}

/** The box within bounds, made tight; null where it holds no point. */
export function tightBox(low: readonly number[], high: readonly number[], total: number): Box | null {
  const box = { low: low.slice(), high: high.slice(), total };
  return tighten(box) ? box : null;
}

/** What the sum leaves no room for is cut from the bounds, in place; false where no point is left. */
export function tighten({ low, high, total }: Box): boolean {
  let least = 0;
  let most = 0;
  for (let at = 0; at < low.length; at += 1) {
    if (low[at]! > high[at]!) return false;
    least += low[at]!;
    most += high[at]!;
  }
  if (least > total || most < total) return false;
  const above = total - least;
  const below = most - total;
  for (let at = 0; at < low.length; at += 1) {
    const [from, to] = [low[at]!, high[at]!];
    if (to - from > above) high[at] = from + above;
    if (to - from > below) low[at] = to - below;
  }
  return true;
}

/** How much room a box has: of two boxes of one system, one in the other, a cheap measure of which share of it is left. */
export function roomIn({ low, high }: Box): number {
  let room = 1;
  for (let at = 0; at < low.length; at += 1) room *= high[at]! - low[at]! + 1;
  return room;
}

/** The point of a box that comes first in the order of numbers. */
export function firstPointOf({ low, high, total }: Box): number[] {
  let rest = total;
  let behind = 0;
  for (let at = 0; at < high.length; at += 1) behind += high[at]!;
  return low.map((least, at) => {
    behind -= high[at]!;
    const parts = Math.max(least, rest - behind);
    rest -= parts;
    return parts;
  });
}

/** The element whose bounds are furthest apart; the first of several. */
export function widestOf({ low, high }: Box): number {
  let widest = 0;
  for (let at = 1; at < low.length; at += 1) {
    if (high[at]! - low[at]! > high[widest]! - low[widest]!) widest = at;
  }
  return widest;
}

/** A box with more than one point in two: up to and including the middle of an element's bounds, and above it. */
export function halvesOf({ low, high, total }: Box, element: number): [Box, Box] {
  const middle = (low[element]! + high[element]!) >> 1;
  const [lower, upper] = [high.slice(), low.slice()];
  lower[element] = middle;
  upper[element] = middle + 1;
  const halves = [
    { low: low.slice(), high: lower, total },
    { low: upper, high: high.slice(), total },
  ] as [Box, Box];
  for (const half of halves) tighten(half);
  return halves;
}

/** Sums of whole numbers are exact below it. */
const exactBelow = 2 ** 53;

/**
 * How many points a box holds; exact below 2^53. By inclusion and exclusion of elements above
 * their bound while every term of that sum is exact, else by additions alone.
 */
export function pointsIn({ low, high, total }: Box): number {
  const elements = low.length;
  let rest = total;
  for (let at = 0; at < elements; at += 1) rest -= low[at]!;
  if (rest < 0) return 0;
  if (waysToShare(rest, elements) * 2 ** elements >= exactBelow)
    return pointsByAddition({ low, high, total });
  return excluding(low, high, 0, rest, elements);
}

/** Points without those in which one of the elements from `first` on is above its bound. */
function excluding(
  low: readonly number[],
  high: readonly number[],
  first: number,
  rest: number,
  elements: number,
): number {
  let points = waysToShare(rest, elements);
  for (let at = first; at < elements; at += 1) {
    const left = rest - (high[at]! - low[at]! + 1);
    if (left >= 0) points -= excluding(low, high, at + 1, left, elements);
  }
  return points;
}

/** In how many ways so many parts are shared out among elements: a binomial, exact while it is below 2^53. */
function waysToShare(parts: number, elements: number): number {
  let ways = 1;
  for (let at = 1; at < elements; at += 1) ways = (ways * (parts + at)) / at;
  return ways;
}

function pointsByAddition({ low, high, total }: Box): number {
  let ways: Float64Array = new Float64Array(total + 1);
  ways[0] = 1;
  for (let at = 0; at < low.length; at += 1) ways = windowSums(ways, low[at]!, high[at]!);
  return ways[total]!;
}
