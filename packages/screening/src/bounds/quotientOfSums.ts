import type { Step } from '../binding/program.ts';
import { greatestFill, leastFill } from './fill.ts';
import { type Interval, setInterval } from './interval.ts';
import { type Box, boxWithout } from './region.ts';

type LinearStep = Extract<Step, { kind: 'linear' }>;

const ROUNDS = 6;
/** Far above the rounding of two sums of a hundred terms and a division. */
const MARGIN = 2 ** -44;

/**
 * Tightens the interval of A/B, two linear sums over one box with B > 0, where the quotient of
 * the two intervals is loose: what makes A least makes B least too.
 *
 * For any λ, A − λB ≥ F with F its greedy least, so that A/B ≥ λ + F/B, and B lies between known
 * ends: a bound for every λ. Each round starts from the last bound, as Dinkelbach's iteration
 * for fractional programmes does; so does the greatest end, from above.
 *
 * @source Dinkelbach, Manage. Sci. 13 (1967) 492 (from memory)
 */
export function quotientOfSums(above: LinearStep, below: LinearStep) {
  const lacks = (index: number) => Number.isNaN(above.coefficients[index]! + below.coefficients[index]!);
  return (whole: Box, divisor: Interval, into: Interval): void => {
    const box = whole.index.some(lacks) ? boxWithout(whole, lacks) : whole;
    if (box === null || into.missing === 'always' || !(divisor.low > 0)) return;
    const numerators = box.index.map((index) => above.coefficients[index]! / above.divisor);
    const divisors = box.index.map((index) => below.coefficients[index]! / below.divisor);
    const fill = (extreme: typeof leastFill, ratio: number) =>
      extreme(
        box,
        numerators.map((numerator, at) => numerator - ratio * divisors[at]!),
      ) / box.total;
    let { low, high } = into;
    for (let round = 0; round < ROUNDS; round++) {
      low = Math.max(low, raised(low, fill(leastFill, low), divisor));
      high = Math.min(high, lowered(high, fill(greatestFill, high), divisor));
    }
    const largest = numerators.reduce((most, numerator) => Math.max(most, Math.abs(numerator)), 0);
    const margin = (MARGIN * largest) / divisor.low;
    setInterval(into, Math.max(into.low, low - margin), Math.min(into.high, high + margin), into.missing);
  };
}

/** ratio + F/B at its least over B. */
function raised(ratio: number, least: number, { low, high }: Interval): number {
  return ratio + least / (least >= 0 ? high : low);
}

/** ratio + F/B at its greatest over B. */
function lowered(ratio: number, greatest: number, { low, high }: Interval): number {
  return ratio + greatest / (greatest >= 0 ? low : high);
}
