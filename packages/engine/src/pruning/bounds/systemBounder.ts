import { evaluator, type Program, type Step } from '@tiegel/screening';
import { isOperator, stepsBehind } from '../../blocks/steps.ts';
import type { Box } from '../boxes/box.ts';
import { conditionOn } from '../cutting/conditionOn.ts';
import { type Affine, always, enterSystem, never, newAffine, setFlat } from './affine.ts';
import { operatorBound } from './operatorBounds.ts';
import { pairBound } from './pairBound.ts';
import { entropyBound, linearBound, type StepBound } from './sumBounds.ts';

/** What the outputs of a program may be over boxes of one system after another. */
export interface SystemBounder {
  /** Turns to a system: places in the pool, ascending, and the parts that make its whole. */
  enter(members: readonly number[], total: number): void;
  /** Turns to a box of that system. Outputs are bounded as they are asked for. */
  bound(box: Box): void;
  /** Ends of output k: every value of it that an evaluator computes in the box lies between them. No value at all: low above high. */
  low(output: number): number;
  high(output: number): number;
  /** Whether it lacks a value at no point (0), perhaps at some (1), at every one (2). */
  missing(output: number): number;
  /**
   * An affine function of y, the parts above the lower corner of the box, that lies below (or above)
   * every value: writes its slopes, in the order of the elements, from a place on, and returns its constant.
   */
  affine(output: number, isBelow: boolean, slopes: Float64Array, start: number): number;
  /**
   * What y must meet where an output is at most (side 1) or at least (−1) a value, as a function of y that is at
   * most 0 there: writes its slopes and returns its constant, −Infinity where nothing follows.
   */
  condition(output: number, side: 1 | -1, value: number, slopes: Float64Array, start: number): number;
}

/**
 * Prepares bounds of these outputs of a program, for systems of up to so many elements.
 *
 * @param ranked the output, if any, whose ends should be exact where that can be had: where one sum decides it, points tie
 */
export function systemBounder(
  program: Program,
  outputs: readonly number[],
  mostElements: number,
  ranked: number | null = null,
): SystemBounder {
  const { steps } = program;
  const places = outputs.map((output) => program.outputs[output]!);
  const needed = stepsBehind(program, places);
  const decidesRanked = ranked === null ? null : stepThatDecides(steps, program.outputs[ranked]!);
  const affine = newAffine(steps.length, mostElements);
  const { frame } = affine;
  const bounds = steps.map((step, number) =>
    needed.has(number)
      ? boundOf(affine, number, step, program, number === decidesRanked)
      : { enter: nothing, bound: nothing },
  );
  /** The steps of each output, in order, and the box that each step was bounded for last. */
  const stepsOf = places.map((place) =>
    Int32Array.from(stepsBehind(program, [place])).sort((one, other) => one - other),
  );
  const enteredFor = new Float64Array(steps.length).fill(-1);
  const boundedFor = new Float64Array(steps.length).fill(-1);
  const readyFor = new Float64Array(outputs.length).fill(-1);
  let boxes = 0;
  let systems = 0;

  /** Where an output stands, once it is bounded for the box at hand. */
  function placeOf(output: number): number {
    if (readyFor[output] !== boxes) {
      const list = stepsOf[output]!;
      for (let at = 0; at < list.length; at += 1) {
        const step = list[at]!;
        if (boundedFor[step] === boxes) continue;
        if (enteredFor[step] !== systems) {
          bounds[step]!.enter();
          enteredFor[step] = systems;
        }
        bounds[step]!.bound();
        boundedFor[step] = boxes;
      }
      readyFor[output] = boxes;
    }
    return places[output]!;
  }

  return {
    enter(members, total) {
      enterSystem(affine, members, total);
      systems += 1;
    },
    bound(box) {
      setFrame(affine, box);
      boxes += 1;
    },
    low: (output) => affine.low[placeOf(output)]!,
    high: (output) => affine.high[placeOf(output)]!,
    missing: (output) => affine.missing[placeOf(output)]!,
    affine(output, isBelow, slopes, start) {
      const side = isBelow ? affine.below : affine.above;
      const place = placeOf(output);
      const from = place * affine.stride;
      for (let at = 0; at < frame.elements; at += 1) slopes[start + at] = side.slopes[from + at]!;
      return side.constants[place]!;
    },
    condition: (output, side, value, slopes, start) =>
      conditionOn(affine, steps, placeOf(output), side, value, slopes, start),
  };
}

function setFrame({ frame }: Affine, { low, high }: Box): void {
  frame.low = low;
  frame.high = high;
  let rest = frame.total;
  let widths = 0;
  for (let at = 0; at < frame.elements; at += 1) {
    const width = high[at]! - low[at]!;
    frame.width[at] = width;
    widths += width;
    rest -= low[at]!;
  }
  frame.rest = rest;
  const share = widths === 0 ? 0 : rest / widths;
  for (let at = 0; at < frame.elements; at += 1) frame.middle[at] = frame.width[at]! * share;
}

/** The sum whose ties are those of a step: the step itself, or what it is a function of and of nothing else. */
function stepThatDecides(steps: readonly Step[], of: number): number {
  const step = steps[of]!;
  if (!isOperator(step) || step.kind === 'choose') return of;
  if ('of' in step) return stepThatDecides(steps, step.of);
  if (steps[step.left]!.kind === 'constant') return stepThatDecides(steps, step.right);
  return steps[step.right]!.kind === 'constant' ? stepThatDecides(steps, step.left) : of;
}

const nothing = () => {};

function boundOf(affine: Affine, number: number, step: Step, program: Program, isRanked: boolean): StepBound {
  if (isOperator(step)) return { enter: nothing, bound: operatorBound(affine, number, step) };
  switch (step.kind) {
    case 'linear':
      return linearBound(affine, number, step);
    case 'pairs':
      return pairBound(affine, number, step);
    case 'entropy':
      return entropyBound(affine, number, isRanked);
    case 'constant':
      return { enter: nothing, bound: () => setFlat(affine, number, step.value, step.value, never) };
    default:
      return ofSystem(affine, number, step, program);
  }
}

/** An extreme over the elements present: one number for each system, which the canonical evaluator computes. */
function ofSystem(affine: Affine, number: number, step: Step, { symbols }: Program): StepBound {
  const { frame } = affine;
  const { evaluate } = evaluator({ symbols, steps: [step], outputs: [0] });
  const value = new Float64Array(1);
  return {
    enter() {
      const { members } = frame;
      evaluate(members, members, members.length, value);
    },
    bound: () => setFlat(affine, number, value[0]!, value[0]!, Number.isNaN(value[0]!) ? always : never),
  };
}
