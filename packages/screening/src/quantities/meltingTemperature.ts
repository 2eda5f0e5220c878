import type { Quantity } from '../definition/quantity.ts';
import { linear } from '../formula/expression.ts';

/**
 * Melting temperature T_m (K) by the rule of mixtures: T_m = Σ cᵢ Tᵢ, Tᵢ of the pure elements.
 * @source Yang & Zhang, Mater. Chem. Phys. 132 (2012) 233 (equation from memory)
 */
export const meltingTemperature: Quantity = {
  id: 'meltingTemperature',
  name: 'Melting temperature',
  symbol: 'T_m',
  unit: 'K',
  formula: linear('meltingTemperature'),
  notation: 'T_m = Σ cᵢ Tᵢ',
  meaning: 'The mean of the melting points of the elements, a first guess of where the alloy melts.',
  range: { min: 0 },
  decimals: 0,
  source: {
    authors: 'Yang & Zhang',
    year: 2012,
    where: 'Mater. Chem. Phys. 132, 233',
    checked: 'from memory',
  },
  caution: 'A rule of mixtures, neither solidus nor liquidus: eutectics melt far below it.',
};
