import type { Facts } from '@tiegel/contract';
import { powerValue } from '../formula/arithmetic.ts';
import type { ElementTerm, PairTerm } from '../formula/expression.ts';
import {
  addCoefficients,
  type Coefficients,
  coefficientsOf,
  mapCoefficients,
  multiplyCoefficients,
  subtractCoefficients,
} from './coefficients.ts';

/** The numbers of an element term, one for each symbol of the facts. */
export function elementCoefficients(term: ElementTerm, facts: Facts): Coefficients {
  const size = facts.symbols.length;
  const of = (inner: ElementTerm) => elementCoefficients(inner, facts);
  switch (term.kind) {
    case 'column':
      return coefficientsOf(
        Float64Array.from(facts.symbols, (_, i) => valueOrNaN(facts.columns[term.column]?.[i])),
      );
    case 'share':
      return coefficientsOf(
        Float64Array.from(facts.symbols, (symbol) => (term.symbols.includes(symbol) ? 1 : 0)),
      );
    case 'constant':
      return coefficientsOf(new Float64Array(size).fill(term.value));
    case 'add':
      return addCoefficients(of(term.left), of(term.right));
    case 'multiply':
      return multiplyCoefficients(of(term.left), of(term.right));
    case 'divide': {
      const divisors = of(term.right).values;
      return mapCoefficients(of(term.left), (value, index) => value / divisors[index]!);
    }
    case 'power':
      return mapCoefficients(of(term.of), (value) => powerValue(value, term.exponent));
  }
}

/** The numbers of a pair term: a symmetric matrix by rows; its diagonal means nothing. */
export function pairCoefficients(term: PairTerm, facts: Facts): Coefficients {
  const size = facts.symbols.length;
  switch (term.kind) {
    case 'pairColumn': {
      const matrix = facts.pairs[term.column];
      return coefficientsOf(
        Float64Array.from({ length: size * size }, (_, at) =>
          valueOrNaN(matrix?.[Math.floor(at / size)]?.[at % size]),
        ),
      );
    }
    case 'constant':
      return coefficientsOf(new Float64Array(size * size).fill(term.value));
    case 'add':
      return addCoefficients(pairCoefficients(term.left, facts), pairCoefficients(term.right, facts));
    case 'multiply':
      return multiplyCoefficients(pairCoefficients(term.left, facts), pairCoefficients(term.right, facts));
    case 'sum':
      return addCoefficients(...ofBoth(term.of, facts));
    case 'product':
      return multiplyCoefficients(...ofBoth(term.of, facts));
    case 'squaredDifference': {
      const difference = subtractCoefficients(...ofBoth(term.of, facts));
      return multiplyCoefficients(difference, difference);
    }
  }
}

/** An element term as two matrices: the value of the row's element and that of the column's. */
function ofBoth(term: ElementTerm, facts: Facts): [Coefficients, Coefficients] {
  const single = elementCoefficients(term, facts);
  const size = facts.symbols.length;
  const spread = (element: (at: number) => number): Coefficients => {
    const fill = (from: Float64Array) =>
      Float64Array.from({ length: size * size }, (_, at) => from[element(at)]!);
    return {
      values: fill(single.values),
      decimal: single.decimal && { ...single.decimal, whole: fill(single.decimal.whole) },
    };
  };
  return [spread((at) => Math.floor(at / size)), spread((at) => at % size)];
}

function valueOrNaN(value: number | null | undefined): number {
  return value ?? Number.NaN;
}
