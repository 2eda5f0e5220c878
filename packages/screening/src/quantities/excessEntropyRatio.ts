import type { Quantity } from '../definition/quantity.ts';
import { absolute, atMost, choose, constant, divide, lesser, minus, times } from '../formula/expression.ts';
import { GAS_CONSTANT_J_PER_MOL_K } from '../formula/gasConstant.ts';
import { configurationalEntropy } from './configurationalEntropy.ts';
import { meltingTemperature } from './meltingTemperature.ts';
import { mismatchEntropy } from './mismatchEntropy.ts';
import { mixingEnthalpy } from './mixingEnthalpy.ts';

const CAP = 1000;

/** What the enthalpy takes from the entropy at the melting temperature, J/(mol K). */
const enthalpyShare = divide(
  absolute(times(constant(1000, 'J/kJ'), mixingEnthalpy.formula)),
  meltingTemperature.formula,
);

/**
 * φ, what the enthalpy leaves of the entropy, over the mismatch entropy, no unit:
 *   φ = min(1000, (ΔS − 1000 |ΔH|/T_m)/(R S_σ/k)),   1000 where S_σ = 0, a pure element included.
 * ΔS in J/(mol K), ΔH in kJ/mol, 1000 J/kJ, T_m in K. The cap is ours.
 * @source Ye, Wang, Lu, Liu & Yang, Scr. Mater. 104 (2015) 53 (equation from memory)
 */
export const excessEntropyRatio: Quantity = {
  id: 'excessEntropyRatio',
  name: 'Excess entropy ratio',
  symbol: 'φ',
  unit: '',
  formula: choose(
    atMost(mismatchEntropy.formula, 0),
    CAP,
    lesser(
      CAP,
      divide(
        minus(configurationalEntropy.formula, enthalpyShare), // J/(mol K)
        times(constant(GAS_CONSTANT_J_PER_MOL_K, 'J/(mol K)'), mismatchEntropy.formula), // J/(mol K)
      ),
    ),
  ),
  notation: 'φ = min(1000, (ΔS − 1000 |ΔH|/T_m) / (R S_σ/k)); 1000 where S_σ = 0',
  meaning:
    'Entropy of mixing, less what the enthalpy takes, against the disorder from unequal sizes; from about 20 one solution is expected.',
  range: { max: CAP },
  decimals: 1,
  source: { authors: 'Ye et al.', year: 2015, where: 'Scr. Mater. 104, 53', checked: 'from memory' },
  caution:
    'It belongs to the radius set, as δ does. Where the sizes hardly differ its size means nothing, and it is a bad ranking.',
};
