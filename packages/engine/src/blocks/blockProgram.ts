import type { Program } from '@tiegel/screening';
import { operatorLoop } from './operatorLoop.ts';
import type { PointBlock } from './pointBlock.ts';
import { selectedValues } from './selectedValues.ts';
import { isOperator, isSum, stepsBehind, variationsOf } from './steps.ts';
import { sumOf } from './sumOf.ts';
import { systemValues } from './systemValues.ts';

/**
 * A program that computes many points at once: every step is an array with a place for each
 * point. The limited quantities are computed everywhere; what only ranking needs, at points
 * that pass.
 */
export interface BlockProgram {
  /** Values of the limited quantities, in the order given. */
  limited: readonly Float64Array[];
  /** Turns to another system, whose amounts make a whole of so many parts. */
  enter(system: readonly number[], whole: number): void;
  /** Puts the points of a block of that system at the places from `offset` on. */
  place(block: PointBlock, offset: number): void;
  /** Computes the limited quantities at the first `count` places. */
  compute(count: number): void;
  /** The scores at the first `count` places selected, in that order; valid until the next call. */
  scores(selected: Int32Array, count: number): Float64Array;
  /** Values of the quantities of the front at the same places, as long as the scores are valid. */
  front: readonly Float64Array[];
}

/**
 * Prepares a program for up to `capacity` points at once, of systems of up to so many elements.
 *
 * @param limited the outputs that limits are on
 * @param score the output that points are ranked by
 * @param front the outputs whose front is asked for
 */
export function blockProgram(
  program: Program,
  limited: readonly number[],
  score: number,
  elements: number,
  capacity: number,
  front: readonly number[] = [],
): BlockProgram {
  const { steps, outputs } = program;
  const variations = variationsOf(program);
  const limitedSteps = limited.map((output) => outputs[output]!);
  const rankedSteps = [score, ...front].map((output) => outputs[output]!);
  const forLimits = stepsBehind(program, limitedSteps);
  const forRanking = stepsBehind(program, rankedSteps);
  const needed = steps.map((_, step) => step).filter((step) => forLimits.has(step) || forRanking.has(step));

  const values = steps.map((step) =>
    new Float64Array(capacity).fill(step.kind === 'constant' ? step.value : Number.NaN),
  );
  const sums = needed.flatMap((number) => {
    const step = steps[number]!;
    return isSum(step) ? [{ sum: sumOf(step, elements, capacity), into: values[number]! }] : [];
  });
  const ofSystem = systemValues(program, variations, needed, values);
  const loops = needed.flatMap((number) => {
    const step = steps[number]!;
    if (!forLimits.has(number) || variations[number] !== 'point' || !isOperator(step)) return [];
    return [operatorLoop(step, (operand) => values[operand]!, values[number]!)];
  });
  const onlyForRanking = needed.filter(
    (number) => !forLimits.has(number) && variations[number] === 'point' && isOperator(steps[number]!),
  );

  const ranked = selectedValues(program, rankedSteps, onlyForRanking, values);

  return {
    limited: limitedSteps.map((step) => values[step]!),
    enter(system, whole) {
      for (const { sum } of sums) sum.enter(system, whole);
      ofSystem.enter(system);
    },
    place(block, offset) {
      for (const { sum, into } of sums) sum.fill(block, into, offset);
      ofSystem.fill(offset, block.count);
    },
    compute(count) {
      for (const loop of loops) loop(count);
    },
    scores(selected, count) {
      ranked.compute(selected, count);
      return ranked.values[0]!;
    },
    front: ranked.values.slice(1),
  };
}
