import type { Facts } from '@tiegel/contract';
import { amountsOf, type Composition } from '@tiegel/screening';

/** What a regular solution is made of. Arrays follow `symbols`, the elements present, alphabetical. */
export interface RegularSolution {
  symbols: string[];
  /** mole fractions */
  fractions: number[];
  /** Ωᵢⱼ = 4 Hᵢⱼ, J/mol, symmetric, 0 on the diagonal: ΔH = Σᵢ<ⱼ Ωᵢⱼ cᵢ cⱼ */
  interactions: number[][];
}

const JOULE_PER_KILOJOULE = 1000;

/**
 * The regular solution of an alloy; null where the facts lack the enthalpy of a pair.
 * @throws RangeError as amountsOf does: no element, an element that the facts lack, a negative amount
 */
export function regularSolution(composition: Composition, facts: Facts): RegularSolution | null {
  const { members, amounts, total } = amountsOf(composition, facts);
  const enthalpies = facts.pairs.mixingEnthalpy;
  const interactions = members.map((i) =>
    members.map((j) => {
      if (i === j) return 0;
      const enthalpy = enthalpies?.[i]?.[j] ?? null;
      return enthalpy === null ? Number.NaN : 4 * enthalpy * JOULE_PER_KILOJOULE;
    }),
  );
  if (interactions.some((row) => row.some(Number.isNaN))) return null;
  return {
    symbols: members.map((member) => facts.symbols[member]!),
    fractions: Array.from(amounts, (amount) => amount / total),
    interactions,
  };
}
