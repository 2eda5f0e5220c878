import type { ElementTerm, Expression, PairTerm } from '../formula/expression.ts';
import { operandsOf } from '../formula/operandsOf.ts';
import type { Quantity } from './quantity.ts';

/** What a formula reads: ids of element columns and of pair columns, each once, in order of first use. */
export interface Columns {
  elements: readonly string[];
  pairs: readonly string[];
}

/** The data columns that a quantity needs, read off its formula. */
export function columnsOf(quantity: Quantity): Columns {
  const elements = new Set<string>();
  const pairs = new Set<string>();

  function readElementTerm(term: ElementTerm): void {
    if (term.kind === 'column') elements.add(term.column);
    if ('left' in term) for (const side of [term.left, term.right]) readElementTerm(side);
    if ('of' in term) readElementTerm(term.of);
  }

  function readPairTerm(term: PairTerm): void {
    if (term.kind === 'pairColumn') pairs.add(term.column);
    if ('left' in term) for (const side of [term.left, term.right]) readPairTerm(side);
    if ('of' in term) readElementTerm(term.of);
  }

  const seen = new Set<Expression>();

  function read(expression: Expression): void {
    // Formulas share parts: without this the walk of a formula of formulas multiplies.
    if (seen.has(expression)) return;
    seen.add(expression);
    switch (expression.kind) {
      case 'linear':
      case 'least':
      case 'greatest':
        readElementTerm(expression.of);
        break;
      case 'pairs':
      case 'leastPair':
      case 'greatestPair':
        readPairTerm(expression.of);
        break;
      default:
        for (const operand of operandsOf(expression)) read(operand);
    }
  }

  read(quantity.formula);
  return { elements: [...elements], pairs: [...pairs] };
}
