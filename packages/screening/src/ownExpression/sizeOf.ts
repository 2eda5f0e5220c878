import type { Expression } from '../expression.ts';
import { operandsOf } from '../operandsOf.ts';

/**
 * How many nodes an expression has when all that it names is written out. Shared parts count each
 * time but are walked once, so that a formula made of formulas made of formulas takes no time.
 */
export function sizeOf(expression: Expression, known = new Map<Expression, number>()): number {
  const counted = known.get(expression);
  if (counted !== undefined) return counted;
  const size = operandsOf(expression).reduce((sum, operand) => sum + sizeOf(operand, known), 1);
  known.set(expression, size);
  return size;
}
