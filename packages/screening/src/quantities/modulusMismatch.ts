import type { Quantity } from '../definition/quantity.ts';
import { constant, divide, linear, squareRoot, times, variance } from '../formula/expression.ts';

/**
 * Modulus mismatch δ_G (%), the relative spread of the shear moduli G (GPa):
 *   δ_G = 100 √( Σ cᵢ (1 − Gᵢ/Ḡ)² ),   Ḡ = Σ cᵢ Gᵢ.
 * @source formed like the size mismatch; common practice
 */
export const modulusMismatch: Quantity = {
  id: 'modulusMismatch',
  name: 'Modulus mismatch',
  symbol: 'δ_G',
  unit: '%',
  formula: times(
    constant(100, '%'),
    divide(
      squareRoot(variance('shearModulus')), // GPa
      linear('shearModulus'), // GPa
    ),
  ),
  notation: 'δ_G = 100 √( Σ cᵢ (1 − Gᵢ/Ḡ)² ), Ḡ = Σ cᵢ Gᵢ',
  meaning:
    'How far the elements differ in stiffness; soft and stiff surroundings hold dislocations up, beside the difference in size.',
  range: { min: 0 },
  decimals: 1,
  source: {
    authors: 'Formed like the size mismatch',
    year: null,
    where: 'relative spread of the shear moduli',
    checked: 'common practice, no source',
  },
  caution: 'Moduli of the pure elements in their own structure, at room temperature.',
};
