import { linearSum } from './linearSum.ts';
import { pairSum } from './pairSum.ts';
import type { SumStep } from './steps.ts';
import type { Sum } from './sum.ts';

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
