import { linearSum } from './linearSum.ts';
import { pairSum } from './pairSum.ts';
import type { PointBlock } from './pointBlock.ts';
import type { SumStep } from './steps.ts';

/** A sum over the elements, at the points of blocks. */
export interface Sum {
  /** Turns to another system, whose amounts make a whole of so many parts. */
  enter(system: readonly number[], whole: number): void;
  /** Writes the sum at every point of a block of that system, from `offset` on. */
  fill(block: PointBlock, into: Float64Array, offset: number): void;
}

/** A sum step, for blocks of up to `capacity` points of systems of up to so many elements. */
export function sumOf(step: SumStep, elements: number, capacity: number): Sum {
  switch (step.kind) {
    case 'linear':
      return linearSum(step, elements, capacity);
    case 'pairs':
      return pairSum(step, elements, capacity);
    case 'entropy':
      return entropySum;
  }
}

/** Blocks bring it along: it depends on the amounts alone. */
const entropySum: Sum = {
  enter() {},
  fill({ count, entropy }, into, offset) {
    for (let at = 0; at < count; at += 1) into[offset + at] = entropy[at]!;
  },
};
