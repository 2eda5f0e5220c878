import type { Expression } from './expression.ts';
import { isBinary, isUnary } from './nodeKinds.ts';

/** The expressions that an operator works on, one level down; none for a sum. */
export function operandsOf(expression: Expression): Expression[] {
  if (isBinary(expression)) return [expression.left, expression.right];
  if (isUnary(expression) || expression.kind === 'power') return [expression.of];
  if (expression.kind !== 'choose') return [];
  const { when, then, otherwise } = expression;
  return [when.left, when.right, then, ...(otherwise ? [otherwise] : [])];
}
