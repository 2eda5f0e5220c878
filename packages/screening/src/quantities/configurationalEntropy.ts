import type { Quantity } from '../definition/quantity.ts';
import { constant, entropy, times } from '../formula/expression.ts';
import { GAS_CONSTANT_J_PER_MOL_K } from '../formula/gasConstant.ts';

/**
 * Configurational entropy ΔS (J/(mol K)) of an ideal, fully disordered solution:
 *   ΔS = −R Σ cᵢ ln cᵢ,   c mole fractions; R ln n for n equal shares, 0 for a pure element.
 * @source Boltzmann; as a measure of alloys Yeh et al., Adv. Eng. Mater. 6 (2004) 299
 */
export const configurationalEntropy: Quantity = {
  id: 'configurationalEntropy',
  name: 'Configurational entropy',
  symbol: 'ΔS',
  unit: 'J/(mol K)',
  formula: times(constant(GAS_CONSTANT_J_PER_MOL_K, 'J/(mol K)'), entropy()),
  notation: 'ΔS = −R Σ cᵢ ln cᵢ',
  meaning:
    'How much the mixing of the atoms alone favours one disordered solution; highest for equal shares.',
  range: { min: 0 },
  decimals: 2,
  source: {
    authors: 'Boltzmann; Yeh et al.',
    year: 2004,
    where: 'Adv. Eng. Mater. 6, 299',
    checked: 'definition',
  },
  caution: 'It is that of an ideal solution: short-range order and second phases lower the real one.',
};
