import type { Facts } from '@tiegel/contract';
import { type Composition, formulaValue, phaseClassProbabilities } from '@tiegel/screening';
import { trainedPhaseReport } from '../data/phaseReport.ts';
import { numberInWords } from '../inWords.ts';
import { alphabetical, compositionDistance } from '../neighbours/compositionDistance.ts';
import { trainingAlloys } from './trainingAlloys.ts';

/** The estimate of the phases of an alloy, as usually made. Probabilities add up to 1; null where there is no basis for them. */
export interface Phase {
  /** one disordered fcc or bcc solution: fcc + bcc */
  singleSolution: number | null;
  fcc: number | null;
  bcc: number | null;
  /** fcc and bcc side by side */
  both: number | null;
  /** anything else: compounds, order, other lattices */
  other: number | null;
  /** How near the training data are: near enough, thinly sown, or too far for a number. */
  basis: 'ok' | 'weak' | 'none';
  /** share of atoms that differ from the nearest alloy of the training data, 0 to 1 */
  nearestDistance: number;
  words: string;
  /** How far to trust it: belongs beside every number above. */
  trust: string;
}

/** Farther from every alloy of the training data the estimate had no skill left (byDistance of the report). */
const FARTHEST = 0.22;
/** From here on few alloys stand for many. */
const THIN = 0.15;

const { alloys, systems, baseRate, scores } = trainedPhaseReport;

/** Holds for every estimate of phases. */
export const phaseTrust =
  `Learnt from ${alloys} published alloys of ${systems} systems, as usually made, and tried on whole systems left ` +
  `out: AUC ${scores.auc.toFixed(2)} (a coin is 0.50), four classes right in ${percent(scores.fourClassAccuracy)} ` +
  `of cases; ${percent(baseRate)} of them are one solution. It knows nothing of processing and annealing, and ` +
  'alloys are published because somebody thought them worth melting.';

const sown = trainingAlloys().map(({ alloy }) => alloy.composition);

/**
 * The probabilities of the phase classes of an alloy with the basis that they have.
 * @throws RangeError for an element that the facts lack, a negative amount, or no element at all
 */
export function phaseOf(composition: Composition, facts: Facts): Phase {
  const ordered = alphabetical(composition);
  const nearestDistance = Math.min(...sown.map((one) => compositionDistance(ordered, one)));
  const said = (name: keyof typeof phaseClassProbabilities): number | null =>
    nearestDistance > FARTHEST ? null : formulaValue(phaseClassProbabilities[name], composition, facts);
  const [fcc, bcc, both, other] = [said('fcc'), said('bcc'), said('both'), said('other')];
  const singleSolution = fcc === null || bcc === null ? null : fcc + bcc;
  const basis = singleSolution === null ? 'none' : nearestDistance > THIN ? 'weak' : 'ok';
  return {
    ...{ singleSolution, fcc, bcc, both, other, basis, nearestDistance },
    words: story({ singleSolution, fcc, bcc, both, other }, basis, nearestDistance),
    trust: phaseTrust,
  };
}

type Probabilities = Pick<Phase, 'singleSolution' | 'fcc' | 'bcc' | 'both' | 'other'>;

const named = {
  fcc: 'one fcc solution',
  bcc: 'one bcc solution',
  both: 'fcc and bcc',
  other: 'something else',
};

function story(said: Probabilities, basis: Phase['basis'], distance: number): string {
  const far = `${percent(distance)} of the atoms differ from the nearest alloy that the estimate knows`;
  if (basis === 'none' || said.singleSolution === null) return `No basis for an estimate: ${far}.`;
  const parts = (Object.keys(named) as (keyof typeof named)[])
    .sort((a, b) => said[b]! - said[a]!)
    .map((name) => `${named[name]} ${numberInWords(said[name]!, 2)}`);
  const thin = basis === 'weak' ? ` The basis is weak: ${far}.` : '';
  return `Probability of one disordered solution ${numberInWords(said.singleSolution, 2)} (${parts.join(', ')}).${thin}`;
}

function percent(share: number): string {
  return `${Math.round(100 * share)} %`;
}
