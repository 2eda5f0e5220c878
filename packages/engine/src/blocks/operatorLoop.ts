import { powerValue } from '@tiegel/screening';
import type { OperatorStep } from './steps.ts';

/**
 * An operator as one tight loop over the first `count` places of arrays: the same operation on
 * the same numbers as the canonical evaluator's. A loop for each operator, so that the compiler
 * sees one kind of array and one operation in it.
 *
 * @param arrayOf the values of a step that is read
 */
export function operatorLoop(
  step: OperatorStep,
  arrayOf: (step: number) => Float64Array,
  into: Float64Array,
): (count: number) => void {
  switch (step.kind) {
    case 'add':
    case 'subtract':
    case 'multiply':
    case 'divide':
    case 'lesser':
    case 'greater': {
      const loop = binaryLoops[step.kind];
      const [left, right] = [arrayOf(step.left), arrayOf(step.right)];
      return (count) => loop(left, right, into, count);
    }
    case 'negate':
    case 'squareRoot':
    case 'absolute':
    case 'exponential':
    case 'logarithm': {
      const loop = unaryLoops[step.kind];
      const of = arrayOf(step.of);
      return (count) => loop(of, into, count);
    }
    case 'power': {
      const of = arrayOf(step.of);
      return (count) => powers(of, step.exponent, into, count);
    }
    case 'choose': {
      const [left, right, then] = [arrayOf(step.left), arrayOf(step.right), arrayOf(step.then)];
      const otherwise = step.otherwise === null ? noValue(into.length) : arrayOf(step.otherwise);
      const loop = step.operator === '<' ? chooseBelow : chooseAtMost;
      return (count) => loop(left, right, then, otherwise, into, count);
    }
  }
}

type BinaryLoop = (left: Float64Array, right: Float64Array, into: Float64Array, count: number) => void;

const binaryLoops: Record<'add' | 'subtract' | 'multiply' | 'divide' | 'lesser' | 'greater', BinaryLoop> = {
  add(left, right, into, count) {
    for (let at = 0; at < count; at += 1) into[at] = left[at]! + right[at]!;
  },
  subtract(left, right, into, count) {
    for (let at = 0; at < count; at += 1) into[at] = left[at]! - right[at]!;
  },
  multiply(left, right, into, count) {
    for (let at = 0; at < count; at += 1) into[at] = left[at]! * right[at]!;
  },
  divide(left, right, into, count) {
    for (let at = 0; at < count; at += 1) into[at] = left[at]! / (right[at]! + 0); // −0 + 0 is 0
  },
  lesser(left, right, into, count) {
    for (let at = 0; at < count; at += 1) into[at] = Math.min(left[at]!, right[at]!);
  },
  greater(left, right, into, count) {
    for (let at = 0; at < count; at += 1) into[at] = Math.max(left[at]!, right[at]!);
  },
};

type UnaryLoop = (of: Float64Array, into: Float64Array, count: number) => void;

const unaryLoops: Record<'negate' | 'squareRoot' | 'absolute' | 'exponential' | 'logarithm', UnaryLoop> = {
  negate(of, into, count) {
    for (let at = 0; at < count; at += 1) into[at] = -of[at]!;
  },
  squareRoot(of, into, count) {
    for (let at = 0; at < count; at += 1) into[at] = Math.sqrt(of[at]!);
  },
  absolute(of, into, count) {
    for (let at = 0; at < count; at += 1) into[at] = Math.abs(of[at]!);
  },
  exponential(of, into, count) {
    for (let at = 0; at < count; at += 1) into[at] = Math.exp(of[at]!);
  },
  logarithm(of, into, count) {
    for (let at = 0; at < count; at += 1) into[at] = Math.log(of[at]!);
  },
};

function powers(of: Float64Array, exponent: number, into: Float64Array, count: number): void {
  for (let at = 0; at < count; at += 1) into[at] = powerValue(of[at]!, exponent);
}

type ChoiceLoop = (
  left: Float64Array,
  right: Float64Array,
  then: Float64Array,
  otherwise: Float64Array,
  into: Float64Array,
  count: number,
) => void;

/** left < right; where neither that nor its opposite holds, a side is missing. */
const chooseBelow: ChoiceLoop = (left, right, then, otherwise, into, count) => {
  for (let at = 0; at < count; at += 1) {
    into[at] = left[at]! < right[at]! ? then[at]! : left[at]! >= right[at]! ? otherwise[at]! : Number.NaN;
  }
};

const chooseAtMost: ChoiceLoop = (left, right, then, otherwise, into, count) => {
  for (let at = 0; at < count; at += 1) {
    into[at] = left[at]! <= right[at]! ? then[at]! : left[at]! > right[at]! ? otherwise[at]! : Number.NaN;
  }
};

function noValue(length: number): Float64Array {
  return new Float64Array(length).fill(Number.NaN);
}
