import type { Step } from '@tiegel/screening';
import { extendSums } from './extendSums.ts';
import type { BlockLevel, PointBlock } from './pointBlock.ts';
import type { Sum } from './sum.ts';

/** What a level holds: the sum so far and, for each later element, what its amount will be multiplied with. */
interface PairLevel {
  sum: Float64Array;
  /** By place in the system: Σᵢ bᵢⱼ xᵢ over the elements so far. */
  ahead: Float64Array[];
}

/** Σᵢ<ⱼ bᵢⱼ xᵢ xⱼ / (divisor · X²) over blocks of up to `capacity` points of systems of up to so many elements. */
export function pairSum(
  { coefficients, divisor }: Extract<Step, { kind: 'pairs' }>,
  elements: number,
  capacity: number,
): Sum {
  const size = Math.sqrt(coefficients.length);
  const nothing = newLevel(elements, 1);
  const scratch = [newLevel(elements, capacity), newLevel(elements, capacity)] as const;
  /** The coefficient of each pair of the system: bᵢⱼ at i · elements + j. */
  const weights = new Float64Array(elements * elements);
  const scale = new Float64Array(1);

  return {
    enter(system, whole) {
      for (let one = 0; one < system.length; one += 1) {
        for (let other = one + 1; other < system.length; other += 1) {
          weights[one * elements + other] = coefficients[system[one]! * size + system[other]!]!;
        }
      }
      scale[0] = divisor * whole * whole;
    },
    fill(block, into, offset) {
      const line = block.levels.length - 1;
      if (line < 0) {
        into[offset] = 0 / scale[0]!;
        return;
      }
      let before = nothing;
      for (let index = 0; index < line; index += 1) {
        const level = block.levels[index]!;
        const here = scratch[(index & 1) as 0 | 1];
        addProducts(before, index, level, here.sum);
        for (let later = index + 1; later <= line + 1; later += 1) {
          extendSums(before.ahead[later]!, level, weights, index * elements + later, here.ahead[later]!);
        }
        before = here;
      }
      finish(before, block, weights, line * elements + line + 1, scale, into, offset);
    },
  };
}

function newLevel(elements: number, capacity: number): PairLevel {
  return {
    sum: new Float64Array(capacity),
    ahead: Array.from({ length: elements }, () => new Float64Array(capacity)),
  };
}

/** The sums of one level: that of the parent and the products of the level's element with those before it. */
function addProducts({ sum, ahead }: PairLevel, place: number, level: BlockLevel, sums: Float64Array): void {
  const { count, parent, parts } = level;
  const others = ahead[place]!;
  for (let at = 0; at < count; at += 1) sums[at] = sum[parent[at]!]! + others[parent[at]!]! * parts[at]!;
}

/** The last two elements, whose coefficient stands at `lastPair`, and the division, in one pass over the points. */
function finish(
  { sum, ahead }: PairLevel,
  { levels, last, count }: PointBlock,
  weights: Float64Array,
  lastPair: number,
  scale: Float64Array,
  into: Float64Array,
  offset: number,
): void {
  const line = levels.length - 1;
  const { parent, parts } = levels[line]!;
  const others = ahead[line]!;
  const othersOfLast = ahead[line + 1]!;
  const weight = weights[lastPair]!;
  const divisor = scale[0]!;
  for (let at = 0; at < count; at += 1) {
    const prefix = parent[at]!;
    const amount = parts[at]!;
    const inner = othersOfLast[prefix]! + weight * amount;
    into[offset + at] = (sum[prefix]! + others[prefix]! * amount + inner * last[at]!) / divisor;
  }
}
