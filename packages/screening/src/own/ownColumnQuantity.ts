import type { Mixing } from '@tiegel/contract/terms';
import type { OwnColumn } from '@tiegel/elements';
import type { Quantity } from '../definition/quantity.ts';
import {
  column,
  divide,
  type ElementTerm,
  type Expression,
  elementProduct,
  elementQuotient,
  linear,
} from '../formula/expression.ts';
import { refuseName } from './refuseName.ts';

/**
 * A column of element data of somebody's own as a quantity like any other: its mean over the atoms,
 * the mass or the volume of the alloy (volumes of the elements alone). Facts need the column:
 * withOwnColumn of packages/elements.
 *
 * @param known the quantities whose ids it may not take
 * @throws ProblemError expression/name-taken
 */
export function ownColumnQuantity(own: OwnColumn, known: readonly Quantity[]): Quantity {
  const { id, name, unit, mixing } = own;
  refuseName(id, known, '');
  const { formula, notation, word } = means[mixing];
  return {
    id,
    name,
    symbol: id,
    unit,
    formula: formula(column(id)),
    notation: `${id} = ${notation}`,
    meaning: `A column of one’s own, the mean ${word}.`,
    range: {},
    decimals: 3,
    source: {
      authors: 'One’s own',
      year: null,
      where: 'the column as it was read',
      checked: 'ours, no source',
    },
    caution: 'A rule of mixtures, if the alloy keeps to one.',
  };
}

const mass = column('atomicMass');
const volume = elementQuotient(mass, column('density'));

const means: Readonly<
  Record<Mixing, { formula: (of: ElementTerm) => Expression; notation: string; word: string }>
> = {
  mole: { formula: linear, notation: 'Σ cᵢxᵢ', word: 'over the atoms' },
  mass: { formula: weightedBy(mass), notation: 'Σ cᵢAᵢxᵢ / Σ cᵢAᵢ', word: 'by mass' },
  volume: { formula: weightedBy(volume), notation: 'Σ cᵢAᵢxᵢ/ρᵢ / Σ cᵢAᵢ/ρᵢ', word: 'by volume' },
};

function weightedBy(weight: ElementTerm): (of: ElementTerm) => Expression {
  return (of) => divide(linear(elementProduct(weight, of)), linear(weight));
}
