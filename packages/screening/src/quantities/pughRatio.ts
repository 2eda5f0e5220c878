import type { Quantity } from '../definition/quantity.ts';
import { divide } from '../formula/expression.ts';
import { bulkModulus } from './bulkModulus.ts';
import { shearModulus } from './shearModulus.ts';

/**
 * Pugh's ratio B/G, no unit, of the bulk to the shear modulus, both by the rule of mixtures:
 *   B/G = Σ cᵢBᵢ/Σ cᵢGᵢ.
 * @source Pugh, Phil. Mag. 45 (1954) 823 (from memory)
 */
export const pughRatio: Quantity = {
  id: 'pughRatio',
  name: 'Pugh’s ratio',
  symbol: 'B/G',
  unit: '',
  formula: divide(bulkModulus.formula, shearModulus.formula),
  notation: 'B/G = Σ cᵢBᵢ / Σ cᵢGᵢ',
  meaning:
    'Resistance to being pulled apart against resistance to shear; above about 1.75 a metal is rather ductile.',
  range: { min: 0 },
  decimals: 2,
  source: { authors: 'Pugh', year: 1954, where: 'Phil. Mag. 45, 823', checked: 'from memory' },
  caution:
    'A tendency of pure metals, on moduli by a rule of mixtures; whether an alloy is brittle its phases and grain boundaries decide.',
};
