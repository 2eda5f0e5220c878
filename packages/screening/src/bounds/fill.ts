import type { Box } from './region.ts';

/**
 * The greatest value over a box of Σ (chargeₑ + rateₑ xₑ), summed over the elements present:
 * an upper bound of it, exact where the optional elements share one pair of bounds and one charge.
 * −Infinity where the box holds no composition.
 *
 * Greedy: every required element has its least part; k optional elements have the least part of
 * any of them, at best the k that are worth most there; what is left goes to the highest rates
 * first, as far as each element's bound lets it and k optional elements together can have. The
 * best k counts.
 *
 * @param rates value of one part, by place in the box
 * @param charges value of being present at all, by place in the box; none by default
 */
export function greatestFill(box: Box, rates: readonly number[], charges?: readonly number[]): number {
  return signedFill(box, 1, rates, charges);
}

/** The least such value: see `greatestFill`. +Infinity where the box holds no composition. */
export function leastFill(box: Box, rates: readonly number[], charges?: readonly number[]): number {
  return 0 - signedFill(box, -1, rates, charges);
}

/** Places of the box by falling signed rate: one scratch list for all fills, none of which outlives its call. */
const order: number[] = [];

/** The greatest value of sign · Σ (chargeₑ + rateₑ xₑ). */
function signedFill(box: Box, sign: 1 | -1, rates: readonly number[], charges?: readonly number[]): number {
  sortByRate(sign, rates);
  let left = box.total;
  let certain = 0;
  for (let at = 0; at < rates.length; at++) {
    if (box.optional[at]) continue;
    left -= box.min[at]!;
    certain += rates[at]! * box.min[at]!;
    if (charges) certain += charges[at]!;
  }
  const fixed = sign * certain;
  if (box.fewestOptional === 0 && box.mostOptional <= 0) return fixed + shareOut(left, 0, box, sign, rates);
  const entries = entryValues(box, sign, rates, charges);
  let best = Number.NEGATIVE_INFINITY;
  let entered = 0;
  let optionalRoom = 0;
  for (let k = 0; k <= box.mostOptional; k++) {
    if (k > 0) {
      entered += entries[k - 1]!;
      optionalRoom += box.optionalRooms[k - 1]!;
      left -= box.leastOptionalPart;
    }
    if (k >= box.fewestOptional) {
      best = Math.max(best, fixed + entered + shareOut(left, optionalRoom, box, sign, rates));
    }
  }
  return best;
}

/** Shares out what is left in the order at hand, no more to optional elements than their room; −Infinity where it does not fit. */
function shareOut(
  left: number,
  optionalRoom: number,
  { min, max, optional, leastOptionalPart }: Box,
  sign: 1 | -1,
  rates: readonly number[],
): number {
  let value = 0;
  let rest = left;
  let restOfOptional = optionalRoom;
  for (let place = 0; rest > 0 && place < rates.length; place++) {
    const at = order[place]!;
    const given = optional[at]
      ? Math.min(rest, restOfOptional, max[at]! - leastOptionalPart)
      : Math.min(rest, max[at]! - min[at]!);
    if (optional[at]) restOfOptional -= given;
    value += given * rates[at]!;
    rest -= given;
  }
  return rest === 0 ? sign * value : Number.NEGATIVE_INFINITY;
}

/** What each optional element is worth at the least part, most first. */
function entryValues(
  box: Box,
  sign: 1 | -1,
  rates: readonly number[],
  charges?: readonly number[],
): number[] {
  const values: number[] = [];
  for (let at = 0; at < rates.length; at++) {
    if (box.optional[at]) values.push(sign * ((charges?.[at] ?? 0) + rates[at]! * box.leastOptionalPart));
  }
  return values.sort((a, b) => b - a);
}

/** By insertion: a box has few elements, and a sort by comparator is slower. */
function sortByRate(sign: 1 | -1, rates: readonly number[]): void {
  for (let at = 0; at < rates.length; at++) {
    let place = at;
    while (place > 0 && sign * (rates[order[place - 1]!]! - rates[at]!) < 0) {
      order[place] = order[place - 1]!;
      place--;
    }
    order[place] = at;
  }
}
