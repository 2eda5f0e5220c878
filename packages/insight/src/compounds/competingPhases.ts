import type { Facts } from '@tiegel/contract';
import { amountsOf, type Composition } from '@tiegel/screening';
import { solve } from 'yalps';
import { type BinaryCompound, compoundsAmong } from './binaryCompounds.ts';

/** A phase of the competing set and the share of all atoms that it holds. */
export interface CompetingPhase {
  /** 'Al3Ni', or the symbol of an element that is left over. */
  formula: string;
  /** mole fraction of atoms */
  fraction: number;
}

/** The lowest combination of compounds and elements at a composition. */
export interface CompetingSet {
  /** kJ per mole of atoms, at most 0: the elements alone have 0 */
  enthalpy: number;
  /** The largest first; fractions add up to 1. */
  phases: CompetingPhase[];
}

/** Shares of atoms below this are rounding of the linear programme. */
const ROUNDING = 1e-10;

/**
 * The combination of binary compounds (binaryCompounds) and pure elements that has the composition
 * and the lowest enthalpy of formation: a linear programme in the shares of the compounds, each at
 * least 0, that use no more of an element than there is; what they leave is pure element at 0. So
 * using nothing is always allowed, and the programme always has an answer.
 *
 * The solver's own objective is rounded; the enthalpy is summed here from the shares.
 *
 * @returns null where the facts lack a parameter of Miedema's model
 * @throws RangeError for an element that the facts lack, a negative amount, or no element at all
 */
export function competingPhases(composition: Composition, facts: Facts): CompetingSet | null {
  const { members, amounts, total } = amountsOf(composition, facts);
  const symbols = members.map((member) => facts.symbols[member]!);
  const compounds = compoundsAmong(symbols, facts)?.filter(({ enthalpy }) => enthalpy < 0);
  if (compounds === undefined) return null;
  const left = new Map(symbols.map((symbol, i) => [symbol, amounts[i]! / total]));
  const shares = lowestShares(compounds, left);
  const phases: CompetingPhase[] = [];
  let enthalpy = 0;
  for (const [compound, fraction] of shares) {
    phases.push({ formula: compound.formula, fraction });
    enthalpy += fraction * compound.enthalpy;
    compound.elements.forEach((symbol, i) => {
      left.set(symbol, left.get(symbol)! - fraction * compound.fractions[i]!);
    });
  }
  for (const [symbol, fraction] of left) if (fraction > ROUNDING) phases.push({ formula: symbol, fraction });
  phases.sort((a, b) => units(b.fraction) - units(a.fraction) || (a.formula < b.formula ? -1 : 1));
  return { enthalpy, phases };
}

/** Shares that differ by rounding alone are equal, so that the alphabet orders them. */
const units = (fraction: number): number => Math.round(fraction / ROUNDING);

/** The compounds of the optimum and their shares of all atoms. */
function lowestShares(
  compounds: readonly BinaryCompound[],
  available: ReadonlyMap<string, number>,
): [BinaryCompound, number][] {
  const solution = solve<BinaryCompound, string>(
    {
      direction: 'minimize',
      objective: 'enthalpy',
      constraints: [...available].map(([symbol, fraction]) => [symbol, { max: fraction }] as const),
      variables: compounds.map(
        (compound) =>
          [
            compound,
            [
              ['enthalpy', compound.enthalpy],
              ...compound.elements.map((symbol, i) => [symbol, compound.fractions[i]!] as const),
            ] as const,
          ] as const,
      ),
    },
    { precision: 1e-13, checkCycles: true },
  );
  if (solution.status !== 'optimal')
    throw new Error(`The competing phases were not found: ${solution.status}.`);
  return solution.variables.filter(([, fraction]) => fraction > ROUNDING);
}
