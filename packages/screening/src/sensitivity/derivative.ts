import type { Program, Step } from '../binding/program.ts';
import { holds } from '../formula/arithmetic.ts';
import type { BinaryKind, UnaryKind } from '../formula/expression.ts';
import { isBinary, isUnary } from '../formula/nodeKinds.ts';
import { staysPut } from './staysPut.ts';

/** A composition in mole fractions and the way in which it is changed: the changes add up to 0. */
export interface Movement {
  /** indices into the program's symbols of the elements present */
  members: readonly number[];
  shares: readonly number[];
  changes: readonly number[];
}

/**
 * How fast each output changes along a movement: its derivative by forward accumulation, one rule
 * for each node. NaN where the derivative does not exist (at the kink of |x|, on the border of a
 * choice) or where there is no value. Extremes over the system do not change while its elements
 * stay.
 *
 * @param values of every step at the composition, as an evaluator leaves them
 */
export function derivative(
  { steps, outputs }: Program,
  values: ArrayLike<number>,
  movement: Movement,
): number[] {
  const rates: number[] = [];
  const stays: boolean[] = [];
  steps.forEach((step, number) => {
    const value = values[number]!;
    stays.push(staysPut(step, movement.members, stays));
    if (Number.isNaN(value)) rates.push(Number.NaN);
    else rates.push(stays[number] ? 0 : rateOf(step, value, values, rates, movement));
  });
  return outputs.map((output) => rates[output]!);
}

function rateOf(
  step: Step,
  value: number,
  values: ArrayLike<number>,
  rates: readonly number[],
  movement: Movement,
): number {
  if (isBinary(step)) {
    const { left, right } = step;
    return binaryRate[step.kind](value, values[left]!, values[right]!, rates[left]!, rates[right]!);
  }
  if (isUnary(step)) return unaryRate[step.kind](value, values[step.of]!, rates[step.of]!);
  switch (step.kind) {
    case 'constant':
    case 'least':
    case 'greatest':
    case 'leastPair':
    case 'greatestPair':
      return 0;
    case 'linear':
      return linearRate(step, movement);
    case 'pairs':
      return pairRate(step, movement);
    case 'entropy':
      return entropyRate(movement);
    case 'power': {
      const { of, exponent } = step;
      return exponent === 0 ? 0 : exponent * values[of]! ** (exponent - 1) * rates[of]!;
    }
    case 'choose':
      return choiceRate(step, values, rates);
  }
}

type StepOf<Kind extends Step['kind']> = Extract<Step, { kind: Kind }>;

function linearRate({ coefficients, divisor }: StepOf<'linear'>, { members, changes }: Movement): number {
  return members.reduce((sum, member, at) => sum + coefficients[member]! * changes[at]!, 0) / divisor;
}

/** Σᵢ changeᵢ Σⱼ bᵢⱼ cⱼ */
function pairRate(
  { coefficients, divisor }: StepOf<'pairs'>,
  { members, shares, changes }: Movement,
): number {
  const size = Math.sqrt(coefficients.length);
  const gradient = (row: number) =>
    members.reduce((sum, column, at) => sum + coefficients[row * size + column]! * shares[at]!, 0);
  return members.reduce((sum, member, at) => sum + gradient(member) * changes[at]!, 0) / divisor;
}

/** −Σ changeᵢ ln cᵢ: the rest of the derivative, −Σ changeᵢ, is 0. */
function entropyRate({ shares, changes }: Movement): number {
  return -shares.reduce((sum, share, at) => sum + changes[at]! * Math.log(share), 0);
}

const binaryRate: Readonly<
  Record<
    BinaryKind,
    (value: number, left: number, right: number, leftRate: number, rightRate: number) => number
  >
> = {
  add: (_, _left, _right, leftRate, rightRate) => leftRate + rightRate,
  subtract: (_, _left, _right, leftRate, rightRate) => leftRate - rightRate,
  multiply: (_, left, right, leftRate, rightRate) => leftRate * right + left * rightRate,
  divide: (value, _left, right, leftRate, rightRate) => (leftRate - value * rightRate) / right,
  lesser: (_, left, right, leftRate, rightRate) => takenRate(left < right, left > right, leftRate, rightRate),
  greater: (_, left, right, leftRate, rightRate) =>
    takenRate(left > right, left < right, leftRate, rightRate),
};

const unaryRate: Readonly<Record<UnaryKind, (value: number, of: number, rate: number) => number>> = {
  negate: (_, _of, rate) => -rate,
  squareRoot: (value, _of, rate) => rate / (2 * value),
  absolute: (_, of, rate) => takenRate(of > 0, of < 0, rate, -rate),
  exponential: (value, _of, rate) => value * rate,
  logarithm: (_, of, rate) => rate / of,
};

/** The rate of the side that is taken; where neither side wins it exists only if both are the same. */
function takenRate(left: boolean, right: boolean, leftRate: number, rightRate: number): number {
  if (left) return leftRate;
  if (right) return rightRate;
  return leftRate === rightRate ? leftRate : Number.NaN;
}

function choiceRate(step: StepOf<'choose'>, values: ArrayLike<number>, rates: readonly number[]): number {
  const [left, right] = [values[step.left]!, values[step.right]!];
  if (left === right && rates[step.left] !== rates[step.right]) return Number.NaN;
  const taken = holds(left, step.operator, right) ? step.then : step.otherwise;
  return taken === null ? Number.NaN : rates[taken]!;
}
