import { pairEnthalpies } from './data/pairEnthalpies.ts';
import type { PairValue } from './own/pairValues.ts';

const key = (a: string, b: string): string => (a < b ? `${a}-${b}` : `${b}-${a}`);
const byPair = new Map(pairEnthalpies.map(([a, b, enthalpy]) => [key(a, b), enthalpy]));

/**
 * Enthalpy of mixing of the equimolar binary liquid, kJ/mol of atoms, negative where unlike atoms
 * attract; the order of the two is irrelevant. 0 for an element with itself, null where none is known.
 * An alloy's is Σᵢ<ⱼ 4 Hᵢⱼ cᵢ cⱼ: the 4 is not in these values.
 * @source Takeuchi & Inoue, Mater. Trans. 46 (2005) 2817
 */
export function pairEnthalpy(a: string, b: string): number | null {
  if (a === b) return 0;
  return byPair.get(key(a, b)) ?? null;
}

/** The same with values of one's own before those of the project. */
export function pairEnthalpyWith(own: readonly PairValue[]): (a: string, b: string) => number | null {
  const ownValues = new Map(own.map(({ a, b, mixingEnthalpy }) => [key(a, b), mixingEnthalpy]));
  return (a, b) => ownValues.get(key(a, b)) ?? pairEnthalpy(a, b);
}
