import type { Facts } from '@tiegel/contract';
import { amountsOf, type Composition, conditionValue, valuesOf } from '@tiegel/screening';
import { binaryCompounds } from './binaryCompounds.ts';
import { solutionEnthalpy } from './solutionEnthalpy.ts';

/** ΔS of the compounds over ΔS of the solution. */
const COMPOUND_ENTROPY = 0.6;

/**
 * By how much entropy outweighs the pull of compounds in the model of Senkov & Miracle, kJ/mol:
 *   (1 − 0.6) T ΔS/1000 − (ΔH − ΔH_IM),   ΔH_IM = Σᵢ<ⱼ 4 H^IM_ij c_i c_j,
 * at the anneal temperature T, H^IM_ij the formation enthalpy of the equimolar compound
 * (binaryCompounds), ΔS_IM = 0.6 ΔS, ΔH as of solutionEnthalpy. Above 0 one solution is expected. Published as a ratio
 * κ = ΔH_IM/ΔH compared with 1 − 0.4 TΔS/(1000 ΔH), which has a pole at ΔH = 0; multiplied out here.
 *
 * @param conditions by name; annealTemperature (K) is used
 * @returns null for a pure element, and where the facts lack a value
 * @throws RangeError for an element that the facts lack, a negative amount, or no element at all
 * @source Senkov & Miracle, J. Alloys Compd. 658 (2016) 603 (from memory)
 */
export function kappaMargin(
  composition: Composition,
  facts: Facts,
  conditions: Readonly<Record<string, number>> = {},
): number | null {
  const { configurationalEntropy = null } = valuesOf(composition, facts, ['configurationalEntropy']);
  const enthalpy = solutionEnthalpy(composition, facts);
  const compoundEnthalpy = compoundMixingEnthalpy(composition, facts);
  if (enthalpy === null || configurationalEntropy === null || compoundEnthalpy === null) return null;
  const temperature = conditionValue('annealTemperature', conditions);
  const entropy = ((1 - COMPOUND_ENTROPY) * temperature * configurationalEntropy) / 1000;
  return entropy - (enthalpy - compoundEnthalpy);
}

/** ΔH_IM, kJ/mol; null for a pure element or without a parameter. */
function compoundMixingEnthalpy(composition: Composition, facts: Facts): number | null {
  const { members, amounts, total } = amountsOf(composition, facts);
  if (members.length < 2) return null;
  const symbols = members.map((member) => facts.symbols[member]!);
  let sum = 0;
  for (let i = 1; i < symbols.length; i++) {
    for (let j = 0; j < i; j++) {
      const equimolar = binaryCompounds(symbols[i]!, symbols[j]!, facts)?.find(
        ({ fractions }) => fractions[0] === 0.5,
      );
      if (equimolar === undefined) return null;
      sum += (4 * equimolar.enthalpy * amounts[i]! * amounts[j]!) / total ** 2;
    }
  }
  return sum;
}
