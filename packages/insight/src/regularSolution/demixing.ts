import type { Facts } from '@tiegel/contract';
import { type Composition, valuesOf } from '@tiegel/screening';
import { elementsInWords, kelvinInWords, numberInWords } from '../inWords.ts';
import { firstMode } from './firstMode.ts';
import { regularSolution } from './regularSolution.ts';
import { soCold } from './soCold.ts';
import { twoSides } from './twoSides.ts';

/** Below which temperature a random solution would begin to separate, and how. */
export interface Demixing {
  /** K; null: at no temperature */
  temperature: number | null;
  /** That temperature over the mean melting temperature of the elements; null where either lacks. */
  ratioToMelting: number | null;
  /** What leaves what: change of each mole fraction, of unit length, 0 in sum, the largest entry positive. Empty where it never separates. */
  mode: Record<string, number>;
  /** The mode as a sentence. */
  words: string;
  /** How far to trust it: belongs beside every number above. */
  trust: string;
}

/** Holds for every answer about demixing. The scores are recomputed from the published alloys in the tests. */
export const demixingTrust =
  'An explanation, not a prediction of phases: the model is a regular solution with mixing enthalpies of ' +
  'liquids (copper–nickel comes out at 962 K; its gap closes near 630 K, from memory), and most second ' +
  'phases are compounds, or castings cool too fast to separate. On published alloys this temperature over ' +
  'the melting temperature tells one phase from several no better than a coin (AUC 0.52, a coin is 0.50).';

/** Elements whose change is at least half of the largest on their side are named in a sentence. */
const NAMED_SHARE = 0.5;

/**
 * Demixing of the random solution: the highest temperature at which its free energy stops curving
 * upwards (see firstMode) and the direction in which it does. Of a binary T = 2 Ω c(1 − c)/R,
 * Ω = 4H > 0. A pure element never separates.
 *
 * @returns null where the facts lack the enthalpy of a pair
 * @throws RangeError for an element that the facts lack, a negative amount, or no element at all
 */
export function demixing(composition: Composition, facts: Facts): Demixing | null {
  const solution = regularSolution(composition, facts);
  if (solution === null) return null;
  const first = firstMode(solution.fractions, solution.interactions);
  if (first === null) {
    const words = 'The random solution would separate at no temperature.';
    return { temperature: null, ratioToMelting: null, mode: {}, words, trust: demixingTrust };
  }
  const { temperature, direction } = first;
  const melting = valuesOf(composition, facts, ['meltingTemperature']).meltingTemperature ?? null;
  const mode = Object.fromEntries(solution.symbols.map((symbol, i) => [symbol, direction[i]!]));
  return {
    temperature,
    ratioToMelting: melting === null ? null : temperature / melting,
    mode,
    words: story(temperature, melting, mode),
    trust: demixingTrust,
  };
}

function story(temperature: number, melting: number | null, mode: Readonly<Record<string, number>>): string {
  const { rising, falling } = twoSides(mode, NAMED_SHARE);
  const what = `${elementsInWords(rising)} would leave ${elementsInWords(falling)}`;
  const below = `Below ${kelvinInWords(temperature, melting ?? temperature)}`;
  if (melting === null) return `${below} ${what}.`;
  if (temperature >= melting) {
    return `${below}, above the mean melting temperature of ${kelvinInWords(melting, temperature)}, ${what}: the melt itself may separate.`;
  }
  return `${below}, ${numberInWords(temperature / melting, 2)} of the mean melting temperature, ${what}${soCold(temperature / melting) || ', given time'}.`;
}
