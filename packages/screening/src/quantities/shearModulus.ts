import type { Quantity } from '../definition/quantity.ts';
import { linear } from '../formula/expression.ts';

/**
 * Shear modulus G (GPa) of the polycrystal near room temperature by the rule of mixtures:
 *   G = Σ cᵢ Gᵢ,   of the pure elements.
 * @source rule of mixtures; common practice
 */
export const shearModulus: Quantity = {
  id: 'shearModulus',
  name: 'Shear modulus',
  symbol: 'G',
  unit: 'GPa',
  formula: linear('shearModulus'),
  notation: 'G = Σ cᵢ Gᵢ',
  meaning: 'Stiffness against shear, if the elements shared the load by their numbers.',
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
