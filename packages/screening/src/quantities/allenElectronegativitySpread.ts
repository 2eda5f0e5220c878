import type { Quantity } from '../definition/quantity.ts';
import { constant, divide, linear, squareRoot, times, variance } from '../formula/expression.ts';

/**
 * Relative spread of the Allen electronegativities Δχ_A (%):
 *   Δχ_A = 100 √( Σ cᵢ (1 − χᵢ/χ̄)² ),   χ̄ = Σ cᵢ χᵢ.
 * @source Poletti & Battezzati, Acta Mater. 75 (2014) 297 (equation from memory)
 */
export const allenElectronegativitySpread: Quantity = {
  id: 'allenElectronegativitySpread',
  name: 'Electronegativity spread (Allen, relative)',
  symbol: 'Δχ_A',
  unit: '%',
  formula: times(
    constant(100, '%'),
    divide(squareRoot(variance('allenElectronegativity')), linear('allenElectronegativity')),
  ),
  notation: 'Δχ_A = 100 √( Σ cᵢ (1 − χᵢ/χ̄)² ), χ̄ = Σ cᵢ χᵢ',
  meaning:
    'How far the elements differ in drawing electrons, relative to their mean; above about 7 % Laves phases are likely.',
  range: { min: 0 },
  decimals: 2,
  source: {
    authors: 'Poletti & Battezzati',
    year: 2014,
    where: 'Acta Mater. 75, 297',
    checked: 'from memory',
  },
  caution: 'On the Allen scale and relative to the mean: not to be compared with Δχ on Pauling’s scale.',
};
