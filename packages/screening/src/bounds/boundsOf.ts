import type { Program, Step } from '../binding/program.ts';
import type { BinaryKind } from '../formula/expression.ts';
import { isBinary, isUnary } from '../formula/nodeKinds.ts';
import { entropyInterval } from './entropyInterval.ts';
import { extremeInterval, pairExtremeInterval } from './extremeInterval.ts';
import { eitherMissing, emptyInterval, type Interval, setInterval } from './interval.ts';
import { linearInterval } from './linearInterval.ts';
import { binaryInterval, choiceInterval, powerInterval, unaryInterval } from './operators.ts';
import { pairInterval } from './pairInterval.ts';
import { quotientOfSums } from './quotientOfSums.ts';
import { type Box, boxOf, type Region } from './region.ts';

/** Bounds the outputs of one program over one region after another. */
export interface Bounder {
  /**
   * An interval for each output: it holds every value, as an evaluator computes it, of every
   * composition of the region. `missing` says whether there may be compositions without a value.
   * The intervals are overwritten by the next call. A region without compositions gives no
   * meaningful interval.
   */
  bounds(region: Region): readonly Interval[];
}

/** Prepares bounds of a program: sums over the region first, then interval arithmetic up the steps. */
export function bounder({ steps, outputs }: Program): Bounder {
  const intervals = steps.map(emptyInterval);
  const bound = steps.map((step) => boundOf(step, steps, intervals));
  const results = outputs.map(emptyInterval);
  return {
    bounds(region) {
      const box = boxOf(region);
      for (let step = 0; step < steps.length; step++) bound[step]!(box, intervals[step]!);
      for (let k = 0; k < outputs.length; k++) asOutput(intervals[outputs[k]!]!, results[k]!);
      return results;
    },
  };
}

/** The bounds of a program's outputs over one region: see `Bounder`. */
export function boundsOf(program: Program, region: Region): readonly Interval[] {
  return bounder(program).bounds(region);
}

type Bound = (box: Box, into: Interval) => void;

function boundOf(step: Step, steps: readonly Step[], intervals: readonly Interval[]): Bound {
  if (isBinary(step)) return binaryBound(step, steps, intervals);
  if (isUnary(step)) {
    const interval = unaryInterval[step.kind];
    const of = intervals[step.of]!;
    return (_, into) => interval(of, into);
  }
  switch (step.kind) {
    case 'constant':
      return (_, into) => setInterval(into, step.value, step.value, 'never');
    case 'linear':
      return linearInterval(step);
    case 'pairs':
      return pairInterval(step);
    case 'entropy':
      return entropyInterval;
    case 'least':
    case 'greatest':
      return extremeInterval(step);
    case 'leastPair':
    case 'greatestPair':
      return pairExtremeInterval(step);
    case 'power': {
      const of = intervals[step.of]!;
      return (_, into) => powerInterval(of, step.exponent, into);
    }
    case 'choose': {
      const [left, right, then] = [intervals[step.left]!, intervals[step.right]!, intervals[step.then]!];
      const otherwise = step.otherwise === null ? null : intervals[step.otherwise]!;
      return (_, into) => choiceInterval(left, step.operator, right, then, otherwise, into);
    }
  }
}

function binaryBound(
  { kind, left, right }: Extract<Step, { kind: BinaryKind }>,
  steps: readonly Step[],
  intervals: readonly Interval[],
): Bound {
  const interval = binaryInterval[kind];
  const [leftInterval, rightInterval] = [intervals[left]!, intervals[right]!];
  const [above, below] = [steps[left]!, steps[right]!];
  if (kind !== 'divide' || above.kind !== 'linear' || below.kind !== 'linear') {
    return (_, into) => interval(leftInterval, rightInterval, into);
  }
  const tighten = quotientOfSums(above, below);
  return (box, into) => {
    interval(leftInterval, rightInterval, into);
    tighten(box, rightInterval, into);
  };
}

/** An infinite result leaves as no value, so an output that may be infinite may be missing. */
function asOutput(interval: Interval, into: Interval): void {
  const finite = Number.isFinite(interval.low) && Number.isFinite(interval.high);
  const missing = finite ? interval.missing : eitherMissing(interval.missing, 'sometimes');
  setInterval(into, interval.low, interval.high, missing);
}
