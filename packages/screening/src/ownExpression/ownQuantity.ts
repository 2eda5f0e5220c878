import { problem } from '@tiegel/contract';
import type { Quantity } from '../quantity.ts';
import { functions } from './functions.ts';
import { parseExpression } from './parseExpression.ts';

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
  const { expression, unit } = parseExpression(text, known, pointer);
  return {
    id: name,
    name,
    symbol: name,
    unit,
    formula: expression,
    notation: `${name} = ${text}`,
    meaning: 'A figure of merit of one’s own.',
    range: {},
    decimals: 3,
    source: { authors: 'One’s own', year: null, where: 'the specification', checked: 'ours, no source' },
  };
}

/** A name that formulas can name: a letter, then letters, digits and underscores, at most 64; no other thing's. */
export function refuseName(name: string, known: readonly Quantity[], pointer: string): void {
  if (!/^[a-zA-Z][a-zA-Z0-9_]{0,63}$/.test(name))
    throw problem('expression/name', { name: name.slice(0, 64) }, pointer);
  if (functions.has(name) || known.some(({ id }) => id === name)) {
    throw problem('expression/name-taken', { name }, pointer);
  }
}
