import type { Facts } from '@tiegel/contract';
import { decimalsBeside } from '@tiegel/contract/terms';
import { type Composition, conditionValue, valuesOf } from '@tiegel/screening';
import { numberInWords, setKelvinInWords } from '../inWords.ts';
import { type CompetingPhase, competingPhases } from './competingPhases.ts';
import { solutionEnthalpy } from './solutionEnthalpy.ts';

/** The random solution against the compounds and elements that it could fall apart into. */
export interface Compounds {
  /** Free energy of the solution above that of the competing set, kJ/mol; below 0: the solution is the lower of the two. */
  hullDistance: number;
  /** The lowest combination of compounds and elements, largest share first. */
  competing: CompetingPhase[];
  /** K */
  temperature: number;
  /** ΔH − TΔS of the random solution above the pure elements, kJ/mol */
  solutionFreeEnergy: number;
  /** Formation enthalpy of the competing set, kJ/mol */
  competingEnthalpy: number;
  words: string;
  /** How far to trust it: belongs beside every number above. */
  trust: string;
}

/** The error of Miedema's model, kJ/mol. */
export const MODEL_ERROR = 10;

/** Holds for every answer about compounds. */
export const compoundsTrust =
  `Miedema’s model errs by some ${MODEL_ERROR} kJ/mol, knows no crystal structures and here no compounds of three ` +
  'elements; compounds are given no entropy, and the solution has the mixing enthalpy of a liquid. A ' +
  'formula in the competing set is a direction, not a phase to be expected: AlNi stands for ' +
  '“aluminium wants nickel”.';

/**
 * Hull distance of an alloy: G = ΔH − TΔS of the random solution (solutionEnthalpy) at the anneal
 * temperature minus the enthalpy of the lowest combination of binary compounds and elements (competingPhases).
 *
 * @param conditions by name; annealTemperature (K) is used
 * @returns null where the facts lack a pair enthalpy or a parameter of Miedema's model
 * @throws RangeError for an element that the facts lack, a negative amount, or no element at all
 */
export function compounds(
  composition: Composition,
  facts: Facts,
  conditions: Readonly<Record<string, number>> = {},
): Compounds | null {
  const lowest = competingPhases(composition, facts);
  const enthalpy = solutionEnthalpy(composition, facts);
  const { configurationalEntropy = null } = valuesOf(composition, facts, ['configurationalEntropy']);
  if (lowest === null || enthalpy === null || configurationalEntropy === null) return null;
  const temperature = conditionValue('annealTemperature', conditions);
  const solutionFreeEnergy = enthalpy - (temperature * configurationalEntropy) / 1000;
  const hullDistance = solutionFreeEnergy - lowest.enthalpy;
  return {
    hullDistance,
    competing: lowest.phases,
    temperature,
    solutionFreeEnergy,
    competingEnthalpy: lowest.enthalpy,
    words: story(hullDistance, lowest.phases, temperature),
    trust: compoundsTrust,
  };
}

function story(distance: number, phases: readonly CompetingPhase[], temperature: number): string {
  const at = `At ${setKelvinInWords(temperature)}`;
  const [largest] = phases;
  if (phases.length === 1 && distance === 0) return `${at} nothing competes with pure ${largest?.formula}.`;
  const size = Math.abs(distance);
  const place = `${numberInWords(size, decimalsBeside(size, MODEL_ERROR, 1))} kJ/mol ${distance > 0 ? 'above' : 'below'}`;
  return `${at} the random solution lies ${place} its strongest competitor, ${setInWords(phases)}: ${verdictOn(distance, phases)}.`;
}

function setInWords(phases: readonly CompetingPhase[]): string {
  const [only] = phases;
  if (phases.length === 1 && only !== undefined) return only.formula;
  const shares = phases.map(({ formula, fraction }) => `${numberInWords(100 * fraction, 0)} % ${formula}`);
  return `${shares.join(' + ')} (shares of the atoms)`;
}

/** Two solutions of other compositions are no part of the competing set: demixing.ts tells of those. */
function verdictOn(distance: number, phases: readonly CompetingPhase[]): string {
  if (Math.abs(distance) < MODEL_ERROR)
    return `within the error of the model, ${MODEL_ERROR} kJ/mol, so undecided`;
  if (distance < 0) return 'no compound would form, though it may still separate into two solutions';
  return phases.every(({ formula }) => isElement(formula))
    ? 'it would separate into its elements'
    : 'compounds would form';
}

/** Whether a phase of the competing set is an element that is left over. */
export const isElement = (formula: string): boolean => /^[A-Z][a-z]?$/.test(formula);
