import type { Quantity } from '../definition/quantity.ts';
import { linear } from '../formula/expression.ts';

/**
 * Young’s modulus E (GPa) of the polycrystal near room temperature by the rule of mixtures:
 *   E = Σ cᵢ Eᵢ,   of the pure elements.
 * @source rule of mixtures; common practice
 */
export const youngsModulus: Quantity = {
  id: 'youngsModulus',
  name: 'Young’s modulus',
  symbol: 'E',
  unit: 'GPa',
  formula: linear('youngsModulus'),
  notation: 'E = Σ cᵢ Eᵢ',
  meaning: 'Stiffness in tension, if the elements shared the load by their numbers.',
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
