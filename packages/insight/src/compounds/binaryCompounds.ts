import type { Facts } from '@tiegel/contract';
import { formationEnthalpy } from './formationEnthalpy.ts';
import { miedemaParameters } from './miedemaParameters.ts';

/** An ordered compound of two elements, as Miedema's model has it: whether it exists is another matter. */
export interface BinaryCompound {
  /** Symbols alphabetical, as in 'Al3Ni'. */
  formula: string;
  /** The two elements, alphabetical, and their mole fractions. */
  elements: readonly [string, string];
  fractions: readonly [number, number];
  /** Formation enthalpy, kJ per mole of atoms */
  enthalpy: number;
}

/** Atoms of the first and the second element in a formula. */
const stoichiometries = [
  [3, 1],
  [2, 1],
  [1, 1],
  [1, 2],
  [1, 3],
] as const;

const ofFacts = new WeakMap<Facts, Map<string, readonly BinaryCompound[] | null>>();

/**
 * The compounds of two elements at 3:1, 2:1, 1:1, 1:2 and 1:3, in this order with the alphabetically
 * first element first; null where the facts lack a parameter of Miedema's model. Computed once for
 * each pair of the same facts.
 */
export function binaryCompounds(one: string, other: string, facts: Facts): readonly BinaryCompound[] | null {
  const pair = one < other ? ([one, other] as const) : ([other, one] as const);
  const known = ofFacts.get(facts) ?? new Map<string, readonly BinaryCompound[] | null>();
  ofFacts.set(facts, known);
  const key = pair.join('-');
  const found = known.get(key);
  if (found !== undefined) return found;
  const made = compoundsOf(pair, facts);
  known.set(key, made);
  return made;
}

function compoundsOf(pair: readonly [string, string], facts: Facts): readonly BinaryCompound[] | null {
  const [first, second] = pair.map((symbol) => miedemaParameters(symbol, facts));
  if (first == null || second == null) return null;
  return stoichiometries.map(([ofFirst, ofSecond]) => {
    const share = ofFirst / (ofFirst + ofSecond);
    return {
      formula: `${pair[0]}${counted(ofFirst)}${pair[1]}${counted(ofSecond)}`,
      elements: pair,
      fractions: [share, 1 - share],
      enthalpy: formationEnthalpy(first, second, share, 'compound'),
    };
  });
}

const counted = (atoms: number): string => (atoms === 1 ? '' : String(atoms));

/** The compounds of every pair of some elements; null where a parameter lacks. */
export function compoundsAmong(symbols: readonly string[], facts: Facts): BinaryCompound[] | null {
  const all: BinaryCompound[] = [];
  for (const [at, other] of symbols.entries()) {
    for (const one of symbols.slice(0, at)) {
      const ofPair = binaryCompounds(one, other, facts);
      if (ofPair === null) return null;
      all.push(...ofPair);
    }
  }
  return all;
}
