import type { Facts } from '@tiegel/contract';
import { amountsOf, type Composition, valuesOf } from '@tiegel/screening';

/**
 * Enthalpy of the random solution above the pure elements as they are, kJ/mol: the mixing enthalpy
 * ΔH of the liquid, whose elements count as metals, plus Σ c H_trans, what it costs to turn boron,
 * carbon, silicon and germanium into metals. Compounds carry the same cost, so that the two can be
 * compared: without it titanium carbide (−77 kJ/mol) would dissolve in its own elements
 * (−109 kJ/mol). The sum is ours; for alloys of metals alone it is ΔH. A pure element is no solution and stays as it is: 0.
 *
 * @returns null where the facts lack a pair enthalpy or a transformation enthalpy
 */
export function solutionEnthalpy(composition: Composition, facts: Facts): number | null {
  const mixing = valuesOf(composition, facts, ['mixingEnthalpy']).mixingEnthalpy ?? null;
  const { members, amounts, total } = amountsOf(composition, facts);
  if (members.length === 1) return mixing;
  let metals = 0;
  for (const [at, member] of members.entries()) {
    const transformation = facts.columns.miedemaTransformation?.[member] ?? null;
    if (transformation === null) return null;
    metals += (transformation * amounts[at]!) / total;
  }
  return mixing === null ? null : mixing + metals;
}
