import type { Facts } from '@tiegel/contract';
import type { ElementTerm, Expression, PairTerm } from '../formula/expression.ts';
import { fold } from '../formula/fold.ts';
import { isBinary, isUnary } from '../formula/nodeKinds.ts';
import type { Coefficients } from './coefficients.ts';
import type { Program, Step } from './program.ts';
import { elementCoefficients, pairCoefficients } from './terms.ts';

/** Sums over integer parts stay exact up to this total, the finest grid's (100 / 0.1). */
const LARGEST_TOTAL = 1000;
const EXACT_BELOW = 2 ** 53;

/**
 * Binds formulas to the data of a pool. Equal parts of the formulas become one step, so a sum
 * that five quantities share is formed once. A column that the facts lack is missing for every
 * element.
 *
 * @param conditions by name, in the units of conditions.ts; what is not given takes its default
 */
export function bind(
  expressions: readonly Expression[],
  facts: Facts,
  conditions: Readonly<Record<string, number>> = {},
): Program {
  const steps: Step[] = [];
  const folded = new Map<Expression, Expression>();
  const visited = new Map<Expression, number>();
  const numbers = new Map<string, number>();

  /** The number of the step with this key, which is made if it is new. */
  function place(key: string, make: () => Step): number {
    const known = numbers.get(key);
    if (known !== undefined) return known;
    steps.push(make());
    numbers.set(key, steps.length - 1);
    return steps.length - 1;
  }

  /** Parts that formulas share are walked once. */
  function stepOf(expression: Expression): number {
    const known = visited.get(expression);
    if (known !== undefined) return known;
    const number = newStepOf(expression);
    visited.set(expression, number);
    return number;
  }

  function newStepOf(expression: Expression): number {
    if (isBinary(expression)) {
      const { kind } = expression;
      const [left, right] = [stepOf(expression.left), stepOf(expression.right)];
      return place(`${kind} ${left} ${right}`, () => ({ kind, left, right }));
    }
    if (isUnary(expression)) {
      const { kind } = expression;
      const of = stepOf(expression.of);
      return place(`${kind} ${of}`, () => ({ kind, of }));
    }
    const { kind } = expression;
    switch (kind) {
      case 'constant':
        return place(`${kind} ${signed(expression.value)}`, () => ({ kind, value: expression.value }));
      case 'condition':
        throw new Error('Conditions are numbers by now.');
      case 'entropy':
        return place(kind, () => ({ kind }));
      case 'power': {
        const { exponent } = expression;
        const of = stepOf(expression.of);
        return place(`${kind} ${of} ${exponent}`, () => ({ kind, of, exponent }));
      }
      case 'choose': {
        const { operator } = expression.when;
        const left = stepOf(expression.when.left);
        const right = stepOf(expression.when.right);
        const then = stepOf(expression.then);
        const otherwise = expression.otherwise && stepOf(expression.otherwise);
        const key = `${kind} ${left} ${operator} ${right} ${then} ${otherwise}`;
        return place(key, () => ({ kind, left, operator, right, then, otherwise }));
      }
      default:
        return place(`${kind} ${JSON.stringify(expression.of)}`, () => sumStep(expression, facts));
    }
  }

  const outputs = expressions.map((expression) => stepOf(fold(expression, conditions, folded)));
  return { symbols: facts.symbols, steps, outputs };
}

type SumExpression =
  | { kind: 'linear' | 'least' | 'greatest'; of: ElementTerm }
  | { kind: 'pairs' | 'leastPair' | 'greatestPair'; of: PairTerm };

function sumStep(expression: SumExpression, facts: Facts): Step {
  switch (expression.kind) {
    case 'linear':
      return { kind: 'linear', ...scaled(elementCoefficients(expression.of, facts), LARGEST_TOTAL) };
    case 'least':
    case 'greatest':
      return { kind: expression.kind, coefficients: elementCoefficients(expression.of, facts).values };
    case 'pairs': {
      const { coefficients, ...scale } = scaled(
        pairCoefficients(expression.of, facts),
        LARGEST_TOTAL ** 2 / 2,
      );
      return { kind: 'pairs', coefficients: withoutDiagonal(coefficients), ...scale };
    }
    case 'leastPair':
    case 'greatestPair': {
      const { values } = pairCoefficients(expression.of, facts);
      return { kind: expression.kind, coefficients: withoutDiagonal(values) };
    }
  }
}

/** Integers over a power of ten if the data allow it and no sum of them can leave what a double holds exactly. */
function scaled({ values, decimal }: Coefficients, heaviest: number) {
  const exact = decimal?.whole.every((whole) => !(Math.abs(whole) * heaviest >= EXACT_BELOW));
  return decimal && exact
    ? { coefficients: decimal.whole, divisor: 10 ** decimal.places, decimal: true }
    : { coefficients: values, divisor: 1, decimal: false };
}

function withoutDiagonal(matrix: Float64Array): Float64Array {
  const size = Math.sqrt(matrix.length);
  return matrix.map((value, at) => (Math.floor(at / size) === at % size ? 0 : value));
}

/** −0 is another number than 0 only here, where equal numbers become one step. */
function signed(value: number): string {
  return Object.is(value, -0) ? '-0' : String(value);
}
