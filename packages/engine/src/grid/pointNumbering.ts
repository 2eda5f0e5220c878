import { type Grid, wholeOf } from './grid.ts';
import { windowSums } from './windowSums.ts';

/**
 * The grid points of one system by number: amounts in parts, in the order of the system's
 * elements, numbered from 0 in ascending lexicographic order (the first element varies slowest).
 */
export interface PointNumbering {
  /** How many points the system has; exact below 2^53. */
  count: number;
  /** The amounts of a point; throws RangeError for a number that is not from 0 to count − 1. */
  partsAt(number: number): number[];
  /** The number of a point of the system. */
  numberOf(parts: ArrayLike<number>): number;
}

/**
 * The numbering of a system's points. Preparing takes (elements × steps) steps; numbering and
 * finding take a step for each part at most.
 */
export function pointNumbering(grid: Grid, system: readonly number[]): PointNumbering {
  const whole = wholeOf(grid, system.length);
  const lowest = system.map((element) => grid.lowest[element]!);
  const highest = system.map((element) => grid.highest[element]!);
  const ways = waysBehind(whole, lowest, highest);
  const waysAt = (index: number, parts: number): number => ways[index]?.[parts] ?? 0;

  function partsAt(number: number): number[] {
    if (!(number >= 0 && number < waysAt(0, whole))) throw new RangeError(`There is no point ${number}.`);
    let before = number;
    let rest = whole;
    return lowest.map((least, index) => {
      let amount = least;
      for (let ahead = waysAt(index + 1, rest - amount); before >= ahead; ) {
        before -= ahead;
        amount += 1;
        ahead = waysAt(index + 1, rest - amount);
      }
      rest -= amount;
      return amount;
    });
  }

  function numberOf(parts: ArrayLike<number>): number {
    let number = 0;
    let rest = whole;
    for (let index = 0; index < parts.length; index += 1) {
      const amount = parts[index]!;
      for (let less = lowest[index]!; less < amount; less += 1) number += waysAt(index + 1, rest - less);
      rest -= amount;
    }
    return number;
  }

  return { count: waysAt(0, whole), partsAt, numberOf };
}

/** ways[index][parts]: amounts of the elements from `index` on that add up to `parts`. */
function waysBehind(whole: number, lowest: readonly number[], highest: readonly number[]): Float64Array[] {
  const last = new Float64Array(whole + 1);
  last[0] = 1;
  const ways: Float64Array[] = [last];
  for (let index = lowest.length - 1; index >= 0; index -= 1) {
    ways.unshift(windowSums(ways[0]!, lowest[index]!, highest[index]!));
  }
  return ways;
}
