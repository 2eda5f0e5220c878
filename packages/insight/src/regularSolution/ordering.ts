import type { Facts } from '@tiegel/contract';
import { type Composition, valuesOf } from '@tiegel/screening';
import { elementsInWords, kelvinInWords, numberInWords } from '../inWords.ts';
import { firstMode } from './firstMode.ts';
import { regularSolution } from './regularSolution.ts';
import { soCold } from './soCold.ts';
import { twoSides } from './twoSides.ts';

/** Below which temperature a random bcc solution would begin to order, and how. */
export interface Ordering {
  /** K; null: at no temperature */
  temperature: number | null;
  /** That temperature over the mean melting temperature of the elements; null where either lacks. */
  ratioToMelting: number | null;
  /** The elements that would gather on either sublattice, most strongly first; whoever is indifferent stands on neither. Empty where it never orders. */
  sublattices: string[][];
  /** Difference of occupation between the sublattices, of unit length, 0 in sum, the largest entry positive. */
  mode: Record<string, number>;
  words: string;
  /** How far to trust it: belongs beside every number above. */
  trust: string;
}

/** Holds for every answer about ordering. The score is recomputed from the published alloys in the tests. */
export const orderingTrust =
  'A mean-field estimate with mixing enthalpies of liquids, of the simplest order on a bcc lattice (B2): ' +
  'mean fields order too high, often by half and more, and the lattice is assumed; magnetism is not in it ' +
  '(cobalt–iron comes out at 241 K and orders below some 1000 K, from memory). On published alloys ' +
  'this temperature over the melting temperature is a weak hint of more than one phase (AUC 0.62, a coin ' +
  'is 0.50).';

/** Elements whose part in the order is at least a fifth of the strongest on their sublattice are listed on it. */
const LISTED_SHARE = 0.2;

/**
 * Ordering of the random solution into two sublattices: the same problem as demixing with the sign
 * of the interactions turned, since unlike neighbours lie on the other sublattice. Of a binary
 * T = −2 Ω c(1 − c)/R, Ω = 4H < 0 (Bragg–Williams). A pure element never orders.
 *
 * @returns null where the facts lack the enthalpy of a pair
 * @throws RangeError for an element that the facts lack, a negative amount, or no element at all
 * @source Bragg & Williams, Proc. R. Soc. A 145 (1934) 699 (from memory)
 */
export function ordering(composition: Composition, facts: Facts): Ordering | null {
  const solution = regularSolution(composition, facts);
  if (solution === null) return null;
  const turned = solution.interactions.map((row) => row.map((energy) => -energy));
  const first = firstMode(solution.fractions, turned);
  if (first === null) {
    const words = 'The random solution would order at no temperature.';
    return {
      temperature: null,
      ratioToMelting: null,
      sublattices: [],
      mode: {},
      words,
      trust: orderingTrust,
    };
  }
  const { temperature, direction } = first;
  const melting = valuesOf(composition, facts, ['meltingTemperature']).meltingTemperature ?? null;
  const mode = Object.fromEntries(solution.symbols.map((symbol, i) => [symbol, direction[i]!]));
  const { rising, falling } = twoSides(mode, LISTED_SHARE);
  return {
    temperature,
    ratioToMelting: melting === null ? null : temperature / melting,
    sublattices: [rising, falling],
    mode,
    words: story(temperature, melting, [rising, falling]),
    trust: orderingTrust,
  };
}

/** The lattice is said with the order: for an alloy that is fcc this order is none. */
function story(
  temperature: number,
  melting: number | null,
  [one, other]: readonly [readonly string[], readonly string[]],
): string {
  const apart = `${elementsInWords(one)} on one sublattice, ${elementsInWords(other)} on the other`;
  const below = `Below ${kelvinInWords(temperature)}`;
  if (melting === null) return `${below} it would order, were it bcc: ${apart}.`;
  if (temperature >= melting) {
    return `It would be ordered up to its melting, were it bcc (the model says ${kelvinInWords(temperature)}): ${apart}.`;
  }
  return `${below}, ${numberInWords(temperature / melting, 2)} of the mean melting temperature, it would order, were it bcc: ${apart}${soCold(temperature / melting)}.`;
}
