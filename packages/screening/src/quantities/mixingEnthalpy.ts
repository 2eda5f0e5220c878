import type { Quantity } from '../definition/quantity.ts';
import { constant, pairColumn, pairProduct, pairs } from '../formula/expression.ts';

/**
 * Enthalpy of mixing ΔH (kJ/mol of atoms) of the liquid as a regular solution:
 *   ΔH = Σᵢ<ⱼ 4 Hᵢⱼ cᵢ cⱼ,   Hᵢⱼ the enthalpy of the equimolar binary liquid (kJ/mol).
 * The 4 turns the equimolar value, at cᵢcⱼ = ¼, into the regular-solution parameter.
 * @source Takeuchi & Inoue, Mater. Trans. 46 (2005) 2817 (equation from memory)
 */
export const mixingEnthalpy: Quantity = {
  id: 'mixingEnthalpy',
  name: 'Mixing enthalpy',
  symbol: 'ΔH',
  unit: 'kJ/mol',
  formula: pairs(pairProduct(constant(4), pairColumn('mixingEnthalpy'))),
  notation: 'ΔH = Σᵢ<ⱼ 4 Hᵢⱼ cᵢ cⱼ',
  meaning:
    'How strongly the elements attract (negative) or repel (positive) each other in the liquid. Strong attraction makes compounds, repulsion makes the alloy separate.',
  range: {},
  decimals: 2,
  source: {
    authors: 'Takeuchi & Inoue',
    year: 2005,
    where: 'Mater. Trans. 46, 2817',
    checked: 'from memory',
  },
  caution:
    'The pair values are whole kJ/mol of a model for liquids: a difference below 0.5 kJ/mol is noise, and pairs such as Cr–Fe, Cr–Mn or Co–Cr are poorly described.',
};
