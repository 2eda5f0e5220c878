import type { Quantity } from '../definition/quantity.ts';
import { leastPair, pairColumn } from '../formula/expression.ts';

/**
 * The lowest pair enthalpy of the system (kJ/mol): min Hᵢⱼ over the pairs of elements present, Hᵢⱼ
 * the enthalpy of mixing of the equimolar binary liquid. A pure element has none.
 * @source pair values: Takeuchi & Inoue, Mater. Trans. 46 (2005) 2817 (from memory)
 */
export const lowestPairEnthalpy: Quantity = {
  id: 'lowestPairEnthalpy',
  name: 'Lowest pair enthalpy',
  symbol: 'H_min',
  unit: 'kJ/mol',
  formula: leastPair(pairColumn('mixingEnthalpy')),
  notation: 'H_min = min Hᵢⱼ',
  meaning:
    'The enthalpy of the two elements that attract each other most; very negative pairs are those that make compounds.',
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
