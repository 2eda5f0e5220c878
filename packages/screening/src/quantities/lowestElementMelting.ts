import type { Quantity } from '../definition/quantity.ts';
import { column, least } from '../formula/expression.ts';

/**
 * The lowest melting point among the elements of the system (K): min Tᵢ.
 * @source common practice, no source
 */
export const lowestElementMelting: Quantity = {
  id: 'lowestElementMelting',
  name: 'Lowest melting point of an element',
  symbol: 'T_low',
  unit: 'K',
  formula: least(column('meltingTemperature')),
  notation: 'T_low = min Tᵢ',
  meaning:
    'Where the first of the elements melts: a hint of where segregated regions or a second phase may melt early.',
  range: { min: 0 },
  decimals: 0,
  source: {
    authors: 'Smallest of the column',
    year: null,
    where: 'a hint of incipient melting',
    checked: 'common practice, no source',
  },
  caution: 'A hint only: eutectics melt below it, and a solution holds its low-melting element far above it.',
};
