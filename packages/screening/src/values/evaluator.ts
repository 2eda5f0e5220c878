import type { Program, Step } from '../binding/program.ts';
import { binaryValue, holds, powerValue, unaryValue } from '../formula/arithmetic.ts';
import { entropyTerm } from '../formula/entropyTerm.ts';
import { isBinary, isUnary } from '../formula/nodeKinds.ts';

/** Computes a program at one composition after another, without allocating. */
export interface Evaluator {
  /** The value of every step at the latest composition, NaN where it has none. */
  values: Float64Array;
  /**
   * Writes the value of each output; not finite (NaN, ±Infinity) means that it has none.
   *
   * @param members indices into the program's symbols, ascending, of the elements present
   * @param amounts how much of each member, all above 0, in any unit
   * @param total the sum of the amounts; on a grid the whole in parts, as an integer
   * @param into one place for each output
   */
  evaluate(members: ArrayLike<number>, amounts: ArrayLike<number>, total: number, into: Float64Array): void;
}

interface Point {
  members: ArrayLike<number>;
  amounts: ArrayLike<number>;
  total: number;
}

type Compute = (point: Point, values: Float64Array) => number;

/**
 * The plain evaluation of a program: the truth that every faster path must reproduce. Its order
 * of operations is the program's; sums run over the members in ascending order.
 */
export function evaluator(program: Program): Evaluator {
  const { outputs } = program;
  const computes = program.steps.map(computeOf);
  const values = new Float64Array(computes.length);
  const point: Point = { members: [], amounts: [], total: 1 };
  return {
    values,
    evaluate(members, amounts, total, into) {
      point.members = members;
      point.amounts = amounts;
      point.total = total;
      for (let step = 0; step < computes.length; step++) values[step] = computes[step]!(point, values);
      for (let k = 0; k < outputs.length; k++) into[k] = values[outputs[k]!]!;
    },
  };
}

function computeOf(step: Step): Compute {
  if (isBinary(step)) {
    const value = binaryValue[step.kind];
    const { left, right } = step;
    return (_, values) => value(values[left]!, values[right]!);
  }
  if (isUnary(step)) {
    const value = unaryValue[step.kind];
    const { of } = step;
    return (_, values) => value(values[of]!);
  }
  switch (step.kind) {
    case 'constant':
      return () => step.value;
    case 'linear':
      return linearSum(step);
    case 'pairs':
      return pairSum(step);
    case 'entropy':
      return entropySum;
    case 'least':
    case 'greatest':
      return extreme(step);
    case 'leastPair':
    case 'greatestPair':
      return pairExtreme(step);
    case 'power':
      return (_, values) => powerValue(values[step.of]!, step.exponent);
    case 'choose':
      return choice(step);
  }
}

type StepOf<Kind extends Step['kind']> = Extract<Step, { kind: Kind }>;

function linearSum({ coefficients, divisor }: StepOf<'linear'>): Compute {
  return ({ members, amounts, total }) => {
    let sum = 0;
    for (let i = 0; i < members.length; i++) sum += coefficients[members[i]!]! * amounts[i]!;
    return sum / (divisor * total);
  };
}

function pairSum({ coefficients, divisor }: StepOf<'pairs'>): Compute {
  const size = Math.sqrt(coefficients.length);
  return ({ members, amounts, total }) => {
    let sum = 0;
    for (let i = 1; i < members.length; i++) {
      const row = members[i]! * size;
      let inner = 0;
      for (let j = 0; j < i; j++) inner += coefficients[row + members[j]!]! * amounts[j]!;
      sum += inner * amounts[i]!;
    }
    return sum / (divisor * total * total);
  };
}

function entropySum({ members, amounts, total }: Point): number {
  let sum = 0;
  for (let i = 0; i < members.length; i++) sum -= entropyTerm(amounts[i]! / total);
  return sum;
}

function extreme({ kind, coefficients }: StepOf<'least' | 'greatest'>): Compute {
  const further = kind === 'least' ? Math.min : Math.max;
  const start = kind === 'least' ? Number.POSITIVE_INFINITY : Number.NEGATIVE_INFINITY;
  return ({ members }) => {
    let found = start;
    for (let i = 0; i < members.length; i++) found = further(found, coefficients[members[i]!]!);
    return found;
  };
}

function pairExtreme({ kind, coefficients }: StepOf<'leastPair' | 'greatestPair'>): Compute {
  const size = Math.sqrt(coefficients.length);
  const further = kind === 'leastPair' ? Math.min : Math.max;
  const start = kind === 'leastPair' ? Number.POSITIVE_INFINITY : Number.NEGATIVE_INFINITY;
  return ({ members }) => {
    if (members.length < 2) return Number.NaN;
    let found = start;
    for (let i = 1; i < members.length; i++) {
      const row = members[i]! * size;
      for (let j = 0; j < i; j++) found = further(found, coefficients[row + members[j]!]!);
    }
    return found;
  };
}

function choice({ left, operator, right, then, otherwise }: StepOf<'choose'>): Compute {
  return (_, values) => {
    const chosen = holds(values[left]!, operator, values[right]!);
    if (chosen === null) return Number.NaN;
    if (chosen) return values[then]!;
    return otherwise === null ? Number.NaN : values[otherwise]!;
  };
}
