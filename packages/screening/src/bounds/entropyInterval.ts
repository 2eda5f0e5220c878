import { leastFill } from './fill.ts';
import { type Interval, setInterval } from './interval.ts';
import type { Box } from './region.ts';

/** Over a hundred entropy terms, each rounded to 2⁻⁵⁰ nat, and the rounding of the bounds themselves. */
const MARGIN = 2 ** -42;
const HALVINGS = 20;

/** −c ln c of a mole fraction: concave, 0 at 0. */
const mixing = (share: number) => (share > 0 ? -share * Math.log(share) : 0);

/**
 * The interval of the entropy sum over a box.
 *
 * - Below: −c ln c lies above its chord between an element's bounds, and chords add up to a
 *   linear sum: greedy.
 * - Above: for any λ the entropy is at most −λ + Σ max(−c ln c + λc), each element for itself
 *   within its bounds (weak duality), of the optional ones the best. λ = 1 + ln t is best where
 *   all elements that their bounds leave free have the same share t; any other is valid.
 */
export function entropyInterval(box: Box, into: Interval): void {
  const low = Math.max(0, leastEntropy(box) - MARGIN);
  setInterval(into, low, greatestEntropy(box) + MARGIN, 'never');
}

function leastEntropy(box: Box): number {
  const charges: number[] = [];
  const rates: number[] = [];
  for (let at = 0; at < box.index.length; at++) {
    const min = box.optional[at] ? box.leastOptionalPart : box.min[at]!;
    const max = box.max[at]!;
    const atMin = mixing(min / box.total);
    const rate = max > min ? (mixing(max / box.total) - atMin) / (max - min) : 0;
    rates.push(rate);
    charges.push(atMin - rate * min);
  }
  return leastFill(box, rates, charges);
}

function greatestEntropy(box: Box): number {
  const level = commonPart(box) / box.total;
  const slope = 1 + Math.log(level);
  const optional: number[] = [];
  let sum = -slope;
  for (let at = 0; at < box.index.length; at++) {
    const share = clamp(level, box.min[at]! / box.total, box.max[at]! / box.total);
    const value = mixing(share) + slope * share;
    if (box.optional[at]) optional.push(value);
    else sum += value;
  }
  optional.sort((a, b) => b - a);
  for (let k = 0; k < box.mostOptional; k++)
    sum += k < box.fewestOptional ? optional[k]! : Math.max(0, optional[k]!);
  return sum;
}

/** The part t for which the required elements, at t within their bounds, and as many optional ones as may be, at t, add up to the whole. */
function commonPart(box: Box): number {
  let [low, high] = [0, box.total];
  for (let halving = 0; halving < HALVINGS; halving++) {
    const t = (low + high) / 2;
    let sum = Math.max(0, box.mostOptional) * t;
    for (let at = 0; at < box.index.length; at++) {
      if (!box.optional[at]) sum += clamp(t, box.min[at]!, box.max[at]!);
    }
    if (sum > box.total) high = t;
    else low = t;
  }
  return high;
}

function clamp(value: number, min: number, max: number): number {
  return Math.min(Math.max(value, min), max);
}
