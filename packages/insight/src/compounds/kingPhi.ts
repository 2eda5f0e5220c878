import type { Facts } from '@tiegel/contract';
import { amountsOf, type Composition, valuesOf } from '@tiegel/screening';
import { compoundsAmong } from './binaryCompounds.ts';
import { solutionEnthalpy } from './solutionEnthalpy.ts';

const CAP = 1000;

/**
 * Φ of King et al., no unit: the free energy of the random solution at the melting temperature
 * against the strongest rival among the system's binaries,
 *   Φ = ΔG_ss/(−|ΔG_max|),   ΔG_ss = ΔH − T_m ΔS (ΔH: solutionEnthalpy),
 * where ΔG_max, of greatest size, is the formation enthalpy of a compound (binaryCompounds, where
 * negative) or the mixing enthalpy of an equimolar pair that repels (positive: it would segregate).
 * One solution is expected from 1 on. Held between −1000 and 1000, which is our cap.
 *
 * @returns null for a pure element, and where the facts lack a value
 * @throws RangeError for an element that the facts lack, a negative amount, or no element at all
 * @source King, Middleburgh, McGregor & Cortie, Acta Mater. 104 (2016) 172 (from memory)
 */
export function kingPhi(composition: Composition, facts: Facts): number | null {
  const symbols = amountsOf(composition, facts).members.map((member) => facts.symbols[member]!);
  const values = valuesOf(composition, facts, ['configurationalEntropy', 'meltingTemperature']);
  const { configurationalEntropy = null, meltingTemperature = null } = values;
  const enthalpy = solutionEnthalpy(composition, facts);
  const rival = strongestRival(symbols, facts);
  if (enthalpy === null || configurationalEntropy === null || meltingTemperature === null) return null;
  if (rival === null || symbols.length < 2) return null;
  const freeEnergy = enthalpy - (meltingTemperature * configurationalEntropy) / 1000;
  return Math.max(-CAP, Math.min(CAP, -freeEnergy / rival));
}

/** |ΔG_max|, kJ/mol */
function strongestRival(symbols: readonly string[], facts: Facts): number | null {
  const compounds = compoundsAmong(symbols, facts);
  if (compounds === null) return null;
  const members = symbols.map((symbol) => facts.symbols.indexOf(symbol));
  const repulsions = members.flatMap((i) => members.map((j) => facts.pairs.mixingEnthalpy?.[i]?.[j] ?? 0));
  return Math.max(0, ...compounds.map(({ enthalpy }) => -enthalpy), ...repulsions);
}
