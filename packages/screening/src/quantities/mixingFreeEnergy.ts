import type { Quantity } from '../definition/quantity.ts';
import { condition, constant, divide, minus, times } from '../formula/expression.ts';
import { configurationalEntropy } from './configurationalEntropy.ts';
import { mixingEnthalpy } from './mixingEnthalpy.ts';

/**
 * Free energy of mixing ΔG (kJ/mol of atoms) of a random solution at the anneal temperature T (K):
 *   ΔG = ΔH − T ΔS/1000,   ΔH in kJ/mol, ΔS in J/(mol K), 1000 J/kJ.
 * @source Gibbs energy of a regular solution
 */
export const mixingFreeEnergy: Quantity = {
  id: 'mixingFreeEnergy',
  name: 'Free energy of mixing',
  symbol: 'ΔG',
  unit: 'kJ/mol',
  formula: minus(
    mixingEnthalpy.formula,
    divide(
      times(condition('annealTemperature'), configurationalEntropy.formula), // J/mol
      constant(1000, 'J/kJ'),
    ),
  ),
  notation: 'ΔG = ΔH − T ΔS/1000',
  meaning:
    'What mixing the atoms at random gains at the anneal temperature, against the pure elements; the more negative, the more.',
  range: {},
  decimals: 2,
  source: {
    authors: 'Gibbs energy of a regular solution',
    year: null,
    where: 'from ΔH and ΔS',
    checked: 'definition',
  },
  caution:
    'A negative value does not make a solution stable: compounds and several solutions compete, and may gain more. The enthalpies are those of liquids.',
};
