import type { Expression } from '../formula/expression.ts';
import { operandsOf } from '../formula/operandsOf.ts';
import type { Quantity } from './quantity.ts';

/** Names of the conditions that a quantity computes with, each once, read off its formula. */
export function conditionsOf({ formula }: Quantity): string[] {
  const found = new Set<string>();
  const seen = new Set<Expression>();
  const read = (expression: Expression): void => {
    // Formulas share parts: without this the walk of a strength or an estimate multiplies.
    if (seen.has(expression)) return;
    seen.add(expression);
    if (expression.kind === 'condition') found.add(expression.name);
    for (const operand of operandsOf(expression)) read(operand);
  };
  read(formula);
  return [...found];
}
