import type { Quantity } from '../definition/quantity.ts';
import { linear } from '../formula/expression.ts';

/**
 * Mean atomic mass (u): Σ cᵢ Aᵢ. Equal in number to the molar mass in g/mol.
 * @source definition
 */
export const meanAtomicMass: Quantity = {
  id: 'meanAtomicMass',
  name: 'Mean atomic mass',
  symbol: 'Ā',
  unit: 'u',
  formula: linear('atomicMass'),
  notation: 'Ā = Σ cᵢ Aᵢ',
  meaning: 'The mass of an average atom; turns amounts of atoms into masses.',
  range: { min: 0 },
  decimals: 2,
  source: { authors: 'Mean over the atoms', year: null, where: 'definition', checked: 'definition' },
};
