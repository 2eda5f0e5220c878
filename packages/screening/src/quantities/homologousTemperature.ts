import type { Quantity } from '../definition/quantity.ts';
import { condition, divide } from '../formula/expression.ts';
import { meltingTemperature } from './meltingTemperature.ts';

/**
 * Homologous temperature T/T_m, no unit: the service temperature (K) over the melting temperature
 * by the rule of mixtures.
 * @source definition
 */
export const homologousTemperature: Quantity = {
  id: 'homologousTemperature',
  name: 'Homologous temperature',
  symbol: 'T/T_m',
  unit: '',
  formula: divide(condition('serviceTemperature'), meltingTemperature.formula),
  notation: 'T/T_m = T / Σ cᵢ Tᵢ',
  meaning:
    'How near to melting the alloy serves; from about 0.4 to 0.5 on, creep and diffusion decide and strength by short tests does not.',
  range: { min: 0 },
  decimals: 3,
  source: {
    authors: 'Service over melting temperature',
    year: null,
    where: 'from T_m',
    checked: 'definition',
  },
  caution: 'T_m is a rule of mixtures, no solidus.',
};
