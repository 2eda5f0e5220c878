import type { Quantity } from '../definition/quantity.ts';
import { column, greatest, least, minus } from '../formula/expression.ts';

/**
 * Gap between the lowest boiling and the highest melting point of the system's elements (K):
 *   min T_b − max T_m; negative where one element boils before another has melted.
 * @source common practice, no source
 */
export const vapourMargin: Quantity = {
  id: 'vapourMargin',
  name: 'Gap between boiling and melting',
  symbol: 'ΔT_v',
  unit: 'K',
  formula: minus(least(column('boilingTemperature')), greatest(column('meltingTemperature'))),
  notation: 'ΔT_v = min T_b − max T_m',
  meaning:
    'How far the melt can be heated above its highest-melting element before its most volatile one boils; negative means that it boils off first.',
  range: {},
  decimals: 0,
  source: {
    authors: 'Smallest less greatest of two columns',
    year: null,
    where: 'a hint of losses in melting',
    checked: 'common practice, no source',
  },
  caution: 'Elements evaporate long before they boil, manganese and chromium in vacuum above all.',
};
