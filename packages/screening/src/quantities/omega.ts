import type { Quantity } from '../definition/quantity.ts';
import { absolute, constant, divide, lesser, times } from '../formula/expression.ts';
import { configurationalEntropy } from './configurationalEntropy.ts';
import { meltingTemperature } from './meltingTemperature.ts';
import { mixingEnthalpy } from './mixingEnthalpy.ts';

const CAP = 1000;

/**
 * Ω, entropy against enthalpy at the melting temperature, no unit:
 *   Ω = min(1000, T_m ΔS / |1000 ΔH|),   T_m in K, ΔS in J/(mol K), 1000 J/kJ, ΔH in kJ/mol.
 * The cap is ours: 1000 where ΔH is 0. A pure element, 0/0, has no value.
 * @source Yang & Zhang, Mater. Chem. Phys. 132 (2012) 233 (equation from memory)
 */
export const omega: Quantity = {
  id: 'omega',
  name: 'Entropy–enthalpy ratio',
  symbol: 'Ω',
  unit: '',
  formula: lesser(
    CAP,
    divide(
      times(meltingTemperature.formula, configurationalEntropy.formula), // J/mol
      absolute(times(constant(1000, 'J/kJ'), mixingEnthalpy.formula)), // J/mol
    ),
  ),
  notation: 'Ω = min(1000, T_m ΔS / |1000 ΔH|)',
  meaning:
    'How far entropy outweighs enthalpy where the alloy melts; above about 1.1 a solution is expected.',
  range: { min: 0, max: CAP },
  decimals: 2,
  source: {
    authors: 'Yang & Zhang',
    year: 2012,
    where: 'Mater. Chem. Phys. 132, 233',
    checked: 'from memory',
  },
  caution:
    'A good limit (at least 1.1) and a bad ranking: above about 50 it says only that ΔH is near 0, which the table of whole kJ/mol cannot tell from noise, and which alloys of copper that separate share.',
};
