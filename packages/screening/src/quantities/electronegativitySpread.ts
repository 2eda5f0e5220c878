import type { Quantity } from '../definition/quantity.ts';
import { squareRoot, variance } from '../formula/expression.ts';

/**
 * Spread of the Pauling electronegativities Δχ (Pauling units, written without a unit):
 *   Δχ = √( Σ cᵢ (χᵢ − χ̄)² ),   χ̄ = Σ cᵢ χᵢ.
 * @source Guo & Liu, Prog. Nat. Sci. Mater. Int. 21 (2011) 433 (equation from memory)
 */
export const electronegativitySpread: Quantity = {
  id: 'electronegativitySpread',
  name: 'Electronegativity spread (Pauling)',
  symbol: 'Δχ',
  unit: '',
  formula: squareRoot(variance('paulingElectronegativity')),
  notation: 'Δχ = √( Σ cᵢ (χᵢ − χ̄)² )',
  meaning: 'How far the elements differ in drawing electrons; a large spread favours compounds.',
  range: { min: 0 },
  decimals: 3,
  source: {
    authors: 'Guo & Liu',
    year: 2011,
    where: 'Prog. Nat. Sci. Mater. Int. 21, 433',
    checked: 'from memory',
  },
  caution: 'A threshold holds only for the electronegativity scale that it was found with, here Pauling’s.',
};
