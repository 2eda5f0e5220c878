import type { Step } from '@tiegel/screening';
import { extendSums } from './extendSums.ts';
import type { PointBlock } from './pointBlock.ts';
import type { Sum } from './sum.ts';

/** Σ aᵢ xᵢ / (divisor · X) over blocks of up to `capacity` points of systems of up to so many elements. */
export function linearSum(
  { coefficients, divisor }: Extract<Step, { kind: 'linear' }>,
  elements: number,
  capacity: number,
): Sum {
  const nothing = new Float64Array(1);
  const scratch = [new Float64Array(capacity), new Float64Array(capacity)] as const;
  /** The coefficient of each element of the system. */
  const weights = new Float64Array(elements);
  const scale = new Float64Array(1);

  return {
    enter(system, whole) {
      for (let place = 0; place < system.length; place += 1) weights[place] = coefficients[system[place]!]!;
      scale[0] = divisor * whole;
    },
    fill(block, into, offset) {
      const line = block.levels.length - 1;
      if (line < 0) {
        into[offset] = (0 + weights[0]! * block.last[0]!) / scale[0]!;
        return;
      }
      let before: Float64Array = nothing;
      for (let level = 0; level < line; level += 1) {
        const sums = scratch[(level & 1) as 0 | 1];
        extendSums(before, block.levels[level]!, weights, level, sums);
        before = sums;
      }
      finish(before, block, weights, scale, into, offset);
    },
  };
}

/** The last two elements and the division, in one pass over the points. */
function finish(
  before: Float64Array,
  { levels, last, count }: PointBlock,
  weights: Float64Array,
  scale: Float64Array,
  into: Float64Array,
  offset: number,
): void {
  const line = levels.length - 1;
  const { parent, parts } = levels[line]!;
  const weight = weights[line]!;
  const weightOfLast = weights[line + 1]!;
  const divisor = scale[0]!;
  for (let at = 0; at < count; at += 1) {
    into[offset + at] = (before[parent[at]!]! + weight * parts[at]! + weightOfLast * last[at]!) / divisor;
  }
}
