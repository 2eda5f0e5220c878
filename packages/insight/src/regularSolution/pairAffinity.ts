import type { Facts } from '@tiegel/contract';
import { type Composition, conditionValue, GAS_CONSTANT_J_PER_MOL_K, valuesOf } from '@tiegel/screening';
import { kelvinInWords, numberInWords, setKelvinInWords } from '../inWords.ts';
import { firstMode } from './firstMode.ts';
import { type RegularSolution, regularSolution } from './regularSolution.ts';

/** How often two unlike elements are neighbours, beside how often chance would have it. */
export interface Affinity {
  a: string;
  b: string;
  /** Warren–Cowley parameter of nearest neighbours: below 0 they seek each other, above 0 they avoid each other, 1 they never meet. */
  shortRangeOrder: number;
  /** Share of all bonds that would join this pair by chance, 2 c_a c_b. */
  weight: number;
  /** True where the first order left what is possible and the value was held at its edge. */
  limited: boolean;
}

/** Which pairs attract and repel each other, at one temperature. */
export interface PairAffinity {
  /** K */
  temperature: number;
  /** Nearest neighbours of an atom, as assumed. */
  coordination: 8 | 12;
  /** Every pair, the strongest effect on the alloy (|parameter| × weight) first. */
  pairs: Affinity[];
  /** K; the first order means nothing below: there the solution demixes or orders. null: nowhere */
  validAbove: number | null;
  words: string;
  trust: string;
}

/** Holds for every answer about pair affinities. */
const affinityTrust =
  'First order in 1/T, nearest neighbours only, with mixing enthalpies of liquids: signs and the order of ' +
  'the pairs mean more than the numbers, which are too large near the ordering or demixing temperature ' +
  'and mean nothing below it.';

/** One-phase alloys are fcc above this valence electron concentration and bcc below, in 93 % of the published. */
const FCC_FROM_VEC = 7.5;

/**
 * Warren–Cowley parameters α_ab = 1 − P_ab/(c_a c_b) of nearest neighbours to first order in 1/T:
 *   α_ab = (w_ab − w̄_a − w̄_b + w̄)/(RT),  w_ab = Ω_ab/z,  w̄_a = Σ c_k w_ak,  w̄ = Σ c_k c_l w_kl,
 * Ω = 4H and z neighbours, so that Σ_b c_b α_ab = 0 (α_aa included): whoever meets one partner more
 * often meets another less. Of a binary α = 2 c(1 − c) Ω/(zRT).
 *
 * The lattice is taken as fcc (z = 12) from a valence electron concentration of 7.5 on, as bcc
 * (z = 8) below and where it is unknown; it scales all values alike.
 *
 * @param conditions by name; annealTemperature (K) is used
 * @returns null where the facts lack the enthalpy of a pair
 * @throws RangeError for an element that the facts lack, a negative amount, or no element at all
 * @source Cowley, Phys. Rev. 77 (1950) 669, for the parameters; the first order of the
 *   high-temperature expansion derived here (ours)
 */
export function pairAffinity(
  composition: Composition,
  facts: Facts,
  conditions: Readonly<Record<string, number>> = {},
): PairAffinity | null {
  const solution = regularSolution(composition, facts);
  if (solution === null) return null;
  const { symbols, fractions, interactions } = solution;
  const temperature = conditionValue('annealTemperature', conditions);
  const electrons =
    valuesOf(composition, facts, ['valenceElectronConcentration']).valenceElectronConcentration ?? 0;
  const coordination = electrons >= FCC_FROM_VEC ? 12 : 8;
  const centred = centredTwice(interactions, fractions);
  const pairs = symbols.flatMap((a, i) =>
    symbols.slice(0, i).map((b, j) => {
      const first = centred[i]![j]! / (coordination * GAS_CONSTANT_J_PER_MOL_K * temperature);
      return affinity(b, a, first, fractions[j]!, fractions[i]!);
    }),
  );
  pairs.sort((p, q) => effect(q) - effect(p) || (p.a + p.b < q.a + q.b ? -1 : 1));
  const validAbove = instability(solution);
  const words = story(pairs, temperature, validAbove);
  return { temperature, coordination, pairs, validAbove, words, trust: affinityTrust };
}

/** The higher of the demixing and the ordering temperature, K; null where there is neither. */
function instability({ fractions, interactions }: RegularSolution): number | null {
  const turned = interactions.map((row) => row.map((energy) => -energy));
  const temperatures = [interactions, turned].flatMap(
    (energies) => firstMode(fractions, energies)?.temperature ?? [],
  );
  return temperatures.length === 0 ? null : Math.max(...temperatures);
}

/** A matrix with the means of its row and column, by mole fraction, taken off and the whole mean put back. */
function centredTwice(matrix: readonly (readonly number[])[], fractions: readonly number[]): number[][] {
  const rowMeans = matrix.map((row) => mean(row, fractions));
  const whole = mean(rowMeans, fractions);
  return matrix.map((row, i) => row.map((value, j) => value - rowMeans[i]! - rowMeans[j]! + whole));
}

function mean(values: readonly number[], fractions: readonly number[]): number {
  return values.reduce((sum, value, i) => sum + fractions[i]! * value, 0);
}

/** No pair can be rarer than never, nor use more bonds than its rarer element has. */
function affinity(a: string, b: string, first: number, shareOfA: number, shareOfB: number): Affinity {
  const least = 1 - 1 / Math.max(shareOfA, shareOfB);
  const held = Math.min(1, Math.max(least, first));
  return { a, b, shortRangeOrder: held, weight: 2 * shareOfA * shareOfB, limited: held !== first };
}

const effect = ({ shortRangeOrder, weight }: Affinity): number => Math.abs(shortRangeOrder) * weight;

function story(pairs: readonly Affinity[], temperature: number, validAbove: number | null): string {
  // By the parameter alone: the pair with the strongest effect on the alloy may be one that is merely frequent.
  const rising = pairs.toSorted((p, q) => p.shortRangeOrder - q.shortRangeOrder);
  const falling = pairs.toSorted((p, q) => q.shortRangeOrder - p.shortRangeOrder);
  const attracted = rising.find(({ shortRangeOrder }) => shortRangeOrder < 0);
  const repelled = falling.find(({ shortRangeOrder }) => shortRangeOrder > 0);
  const named = ({ a, b, shortRangeOrder }: Affinity) => `${a}–${b} (α ${numberInWords(shortRangeOrder, 2)})`;
  const parts = [
    attracted && `${named(attracted)} seek each other most`,
    repelled && `${named(repelled)} avoid each other most`,
  ].filter((part) => part !== undefined);
  const at = `At ${setKelvinInWords(temperature)}`;
  if (parts.length === 0) return `${at} neighbours are as chance has them.`;
  const deep =
    validAbove !== null && temperature < validAbove
      ? `; read the signs only, the first order does not hold below ${kelvinInWords(validAbove, temperature)}`
      : '';
  return `${at} ${parts.join(', ')}${deep}.`;
}
