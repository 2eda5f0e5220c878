import type { ElementTerm, Expression, PairTerm } from './expression.ts';
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
    if ('left' in term) [term.left, term.right].forEach(readElementTerm);
    if ('of' in term) readElementTerm(term.of);
  }

  function readPairTerm(term: PairTerm): void {
    if (term.kind === 'pairColumn') pairs.add(term.column);
    if ('left' in term) [term.left, term.right].forEach(readPairTerm);
    if ('of' in term) readElementTerm(term.of);
  }

  function read(expression: Expression): void {
    switch (expression.kind) {
      case 'linear':
      case 'least':
      case 'greatest':
        return readElementTerm(expression.of);
      case 'pairs':
      case 'leastPair':
      case 'greatestPair':
        return readPairTerm(expression.of);
      default:
        operandsOf(expression).forEach(read);
    }
  }

  read(quantity.formula);
  return { elements: [...elements], pairs: [...pairs] };
}

/** The expressions that one is made of, one level down. */
function operandsOf(expression: Expression): Expression[] {
  switch (expression.kind) {
    case 'add':
    case 'subtract':
    case 'multiply':
    case 'divide':
    case 'lesser':
    case 'greater':
      return [expression.left, expression.right];
    case 'negate':
    case 'squareRoot':
    case 'absolute':
    case 'exponential':
    case 'logarithm':
    case 'power':
      return [expression.of];
    case 'choose': {
      const { when, then, otherwise } = expression;
      return [when.left, when.right, then, ...(otherwise ? [otherwise] : [])];
    }
    default:
      return [];
  }
}
