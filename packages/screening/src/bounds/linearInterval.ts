import type { Step } from '../binding/program.ts';
import { greatestFill, leastFill } from './fill.ts';
import { type Interval, setInterval } from './interval.ts';
import { type Box, boxWithout } from './region.ts';
import { sumMargin } from './sumMargin.ts';

/**
 * The interval of a linear sum over a box, filled greedily from either end. Compositions with an
 * element whose value is missing have no sum; the rest of the box is bounded without it.
 */
export function linearInterval({
  coefficients,
  divisor,
  decimal,
}: Extract<Step, { kind: 'linear' }>): (box: Box, into: Interval) => void {
  const lacks = (index: number) => Number.isNaN(coefficients[index]!);
  return (whole, into) => {
    const incomplete = whole.index.some(lacks);
    const box = incomplete ? boxWithout(whole, lacks) : whole;
    if (box === null) return setInterval(into, Number.NaN, Number.NaN, 'always');
    const rates = box.index.map((index) => coefficients[index]!);
    const margin = sumMargin(largestSize(rates) * box.total, decimal);
    const scale = divisor * box.total;
    const least = leastFill(box, rates) - margin;
    const low = (rates.every((rate) => rate >= 0) ? Math.max(0, least) : least) / scale;
    const high = (greatestFill(box, rates) + margin) / scale;
    setInterval(into, low, high, incomplete && whole.mostOptional > 0 ? 'sometimes' : 'never');
  };
}

function largestSize(numbers: readonly number[]): number {
  return numbers.reduce((largest, number) => Math.max(largest, Math.abs(number)), 0);
}
