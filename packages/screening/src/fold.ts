import { binaryValue, holds, powerValue, unaryValue } from './arithmetic.ts';
import { conditionValue } from './conditions.ts';
import { choice, constant, type Expression } from './expression.ts';

/**
 * The same formula with the conditions' numbers in place and all arithmetic on fixed numbers
 * done: what is left depends on the composition. Units are dropped; they were checked before.
 */
export function fold(expression: Expression, conditions: Readonly<Record<string, number>>): Expression {
  const of = (inner: Expression) => fold(inner, conditions);
  switch (expression.kind) {
    case 'condition':
      return constant(conditionValue(expression.name, conditions));
    case 'add':
    case 'subtract':
    case 'multiply':
    case 'divide':
    case 'lesser':
    case 'greater': {
      const [left, right] = [of(expression.left), of(expression.right)];
      return left.kind === 'constant' && right.kind === 'constant'
        ? constant(binaryValue[expression.kind](left.value, right.value))
        : { kind: expression.kind, left, right };
    }
    case 'negate':
    case 'squareRoot':
    case 'absolute':
    case 'exponential':
    case 'logarithm': {
      const inner = of(expression.of);
      return inner.kind === 'constant'
        ? constant(unaryValue[expression.kind](inner.value))
        : { kind: expression.kind, of: inner };
    }
    case 'power': {
      const inner = of(expression.of);
      return inner.kind === 'constant'
        ? constant(powerValue(inner.value, expression.exponent))
        : { ...expression, of: inner };
    }
    case 'choose':
      return foldChoice(expression, of);
    default:
      return expression;
  }
}

function foldChoice(
  expression: Expression & { kind: 'choose' },
  of: (inner: Expression) => Expression,
): Expression {
  const left = of(expression.when.left);
  const right = of(expression.when.right);
  const then = of(expression.then);
  const otherwise = expression.otherwise && of(expression.otherwise);
  if (left.kind !== 'constant' || right.kind !== 'constant') {
    return choice({ ...expression.when, left, right }, then, otherwise);
  }
  const chosen = holds(left.value, expression.when.operator, right.value);
  return (chosen === null ? null : chosen ? then : otherwise) ?? constant(Number.NaN);
}
