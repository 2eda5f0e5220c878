import { binaryValue, holds, powerValue, unaryValue } from './arithmetic.ts';
import { conditionValue } from './conditions.ts';
import { choice, constant, type Expression } from './expression.ts';
import { isBinary, isUnary } from './nodeKinds.ts';

/**
 * The same formula with the conditions' numbers in place and all arithmetic on fixed numbers
 * done: what is left depends on the composition. Units are dropped; they were checked before.
 *
 * @param done parts that were folded before with the same conditions. Formulas share parts, and
 *   formulas of formulas share them many times over: each is folded once, and stays shared.
 */
export function fold(
  expression: Expression,
  conditions: Readonly<Record<string, number>>,
  done = new Map<Expression, Expression>(),
): Expression {
  const known = done.get(expression);
  if (known !== undefined) return known;
  const folded = foldedPart(expression, conditions, (inner) => fold(inner, conditions, done));
  done.set(expression, folded);
  return folded;
}

function foldedPart(
  expression: Expression,
  conditions: Readonly<Record<string, number>>,
  of: (inner: Expression) => Expression,
): Expression {
  if (isBinary(expression)) {
    const { kind } = expression;
    const [left, right] = [of(expression.left), of(expression.right)];
    return left.kind === 'constant' && right.kind === 'constant'
      ? constant(binaryValue[kind](left.value, right.value))
      : { kind, left, right };
  }
  if (isUnary(expression)) {
    const { kind } = expression;
    const inner = of(expression.of);
    return inner.kind === 'constant' ? constant(unaryValue[kind](inner.value)) : { kind, of: inner };
  }
  switch (expression.kind) {
    case 'condition':
      return constant(conditionValue(expression.name, conditions));
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
  { when, then, otherwise }: Expression & { kind: 'choose' },
  of: (inner: Expression) => Expression,
): Expression {
  const left = of(when.left);
  const right = of(when.right);
  if (left.kind !== 'constant' || right.kind !== 'constant') {
    return choice({ ...when, left, right }, of(then), otherwise && of(otherwise));
  }
  const chosen = holds(left.value, when.operator, right.value);
  const taken = chosen === null ? null : chosen ? then : otherwise;
  return taken === null ? constant(Number.NaN) : of(taken);
}
