import type { Quantity } from '../definition/quantity.ts';
import { parseExpression } from './parseExpression.ts';
import { refuseName } from './refuseName.ts';

/**
 * A figure of merit of somebody's own as a quantity like any other: name and text of the formula.
 *
 * @param known the quantities that it may name, and whose ids it may not take: those of the
 *   registry and one's own, columns and figures of merit that stand before it
 * @param pointer JSON pointer of the text, for its faults
 * @throws ProblemError expression/name, expression/name-taken, and what parseExpression throws
 */
export function ownQuantity(name: string, text: string, known: readonly Quantity[], pointer = ''): Quantity {
  refuseName(name, known, pointer);
  const { expression, unit, unitInFormulas } = parseExpression(text, known, pointer);
  return {
    id: name,
    name,
    symbol: name,
    unit,
    unitInFormulas,
    formula: expression,
    notation: `${name} = ${text}`,
    meaning: 'A figure of merit of one’s own.',
    range: {},
    decimals: 3,
    source: { authors: 'One’s own', year: null, where: 'the specification', checked: 'ours, no source' },
  };
}
