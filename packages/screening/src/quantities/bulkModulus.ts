import type { Quantity } from '../definition/quantity.ts';
import { linear } from '../formula/expression.ts';

/**
 * Bulk modulus B (GPa) of the polycrystal near room temperature by the rule of mixtures:
 *   B = Σ cᵢ Bᵢ,   of the pure elements.
 * @source rule of mixtures; common practice
 */
export const bulkModulus: Quantity = {
  id: 'bulkModulus',
  name: 'Bulk modulus',
  symbol: 'B',
  unit: 'GPa',
  formula: linear('bulkModulus'),
  notation: 'B = Σ cᵢ Bᵢ',
  meaning: 'Stiffness against pressure from all sides, if the elements shared the load by their numbers.',
  range: { min: 0 },
  decimals: 0,
  source: {
    authors: 'Rule of mixtures',
    year: null,
    where: 'mean over the atoms',
    checked: 'common practice, no source',
  },
  caution:
    'A rule of mixtures at room temperature: real moduli of alloys differ by ten per cent and more, and fall with temperature.',
};
