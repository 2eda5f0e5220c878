import type { Quantity } from '../definition/quantity.ts';
import { greatestPair, pairColumn } from '../formula/expression.ts';

/**
 * The highest pair enthalpy of the system (kJ/mol): max Hᵢⱼ over the pairs of elements present, Hᵢⱼ
 * the enthalpy of mixing of the equimolar binary liquid. A pure element has none.
 * @source pair values: Takeuchi & Inoue, Mater. Trans. 46 (2005) 2817 (from memory)
 */
export const highestPairEnthalpy: Quantity = {
  id: 'highestPairEnthalpy',
  name: 'Highest pair enthalpy',
  symbol: 'H_max',
  unit: 'kJ/mol',
  formula: greatestPair(pairColumn('mixingEnthalpy')),
  notation: 'H_max = max Hᵢⱼ',
  meaning:
    'The enthalpy of the two elements that repel each other most, or attract each other least; clearly positive pairs are those that separate.',
  range: {},
  decimals: 0,
  source: {
    authors: 'Takeuchi & Inoue',
    year: 2005,
    where: 'Mater. Trans. 46, 2817',
    checked: 'from memory',
  },
  caution: 'It does not know how much of the two elements there is: a trace counts like a main element.',
};
