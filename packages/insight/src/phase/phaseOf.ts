import type { Facts } from '@tiegel/contract';
import { decimalsBeside } from '@tiegel/contract/terms';
import { type PublishedAlloy, publishedAlloys } from '@tiegel/elements/publishedAlloys';
import {
  amountsOf,
  bind,
  type Composition,
  evaluator,
  phaseClassProbabilities,
  quantityOf,
} from '@tiegel/screening';
import { trainedPhaseReport } from '../data/phaseReport.ts';
import { numberInWords, percentInWords } from '../inWords.ts';
import { novelty } from '../neighbours/nearestPublished.ts';
import { phaseClasses } from './trainingAlloys.ts';

type ClassName = (typeof phaseClasses)[number];
type Probabilities = Readonly<Record<ClassName, number>>;

/** The estimate of the phases of an alloy, as usually made. Probabilities add up to 1; null where there is no basis for them. */
export interface Phase {
  /** one disordered fcc or bcc solution: fcc + bcc, the quantity singlePhaseEstimate */
  singleSolution: number | null;
  fcc: number | null;
  bcc: number | null;
  /** fcc and bcc side by side */
  both: number | null;
  /** anything else: compounds, order, other lattices */
  other: number | null;
  /** How near the training data are: near enough, thinly sown, or too far for a number. */
  basis: 'ok' | 'weak' | 'none';
  /** share of atoms that differ from the nearest published alloy whose phases were reported, 0 to 1 */
  nearestDistance: number;
  /**
   * The classes that hold what is reported of 80 % of alloys, likeliest first. Several are the
   * honest answer for many alloys. null without a basis.
   */
  likely: readonly ClassName[] | null;
  words: string;
  /** How far to trust it: belongs beside every number above. */
  trust: string;
}

/** Up to here the basis is good, and weak up to the next, as shares of atoms that differ. */
const NEAR = 0.15;
const FARTHEST = quantityOf('singlePhaseEstimate').basis!.max;
/** A distance that lies on a border up to rounding counts as within it. */
const ROUNDING = 1e-9;

const { alloys, systems, baseRate, scores, intervals, likelyFrom } = trainedPhaseReport;

/** Holds for every estimate of phases. */
export const phaseTrust =
  `Learnt from ${alloys} published alloys of ${systems} systems, as usually made, and tried on whole systems left ` +
  `out: AUC ${numberInWords(scores.auc, 2)} (95 %: ${intervals.auc.map((auc) => numberInWords(auc, 2)).join(' to ')}; ` +
  `a coin: 0.50), four classes right for ${percentInWords(scores.fourClassAccuracy)}; ${percentInWords(baseRate)} of ` +
  'the alloys are one solution. It knows nothing of processing and annealing, and alloys are published ' +
  'because somebody thought them worth melting.';

let labelled: readonly PublishedAlloy[] | undefined;

/** Published alloys of which phases were reported. */
function known(): readonly PublishedAlloy[] {
  labelled ??= publishedAlloys().filter(({ phaseClass }) => phaseClass !== null);
  return labelled;
}

/**
 * The probabilities of the phase classes of an alloy, with the basis that they have. A tenth of
 * a millisecond, after the first with the same facts.
 *
 * @param composition amounts of any total; the order of the elements changes nothing
 * @throws RangeError for an element that the facts lack, a negative amount, or no element at all
 */
export function phaseOf(composition: Composition, facts: Facts): Phase {
  const nearestDistance = novelty(composition, known());
  const [single, ...ofClasses] = probabilitiesFor(facts)(composition);
  if (!Number.isFinite(single) || nearestDistance > FARTHEST + ROUNDING) {
    return {
      ...{ singleSolution: null, fcc: null, bcc: null, both: null, other: null, basis: 'none' },
      ...{ nearestDistance, likely: null, trust: phaseTrust },
      words: withoutBasis(nearestDistance),
    };
  }
  const classes = Object.fromEntries(phaseClasses.map((name, k) => [name, ofClasses[k]!])) as Probabilities;
  const basis = nearestDistance > NEAR + ROUNDING ? 'weak' : 'ok';
  const likely = likelyOf(classes);
  return {
    ...{ singleSolution: single, ...classes, basis, nearestDistance, likely, trust: phaseTrust },
    words: `${inWords(single, classes)} ${narrowed(likely)}${basis === 'weak' ? thinly(nearestDistance) : ''}`,
  };
}

const bound = new WeakMap<Facts, (composition: Composition) => readonly [number, ...number[]]>();

/** What computes p(one solution) and the classes, NaN without a value; bound once for each facts, which costs more than a thousand answers. */
function probabilitiesFor(facts: Facts): (composition: Composition) => readonly [number, ...number[]] {
  const known = bound.get(facts);
  if (known) return known;
  const formulas = [
    quantityOf('singlePhaseEstimate').formula,
    ...phaseClasses.map((name) => phaseClassProbabilities[name]),
  ];
  const { evaluate } = evaluator(bind(formulas, facts));
  const into = new Float64Array(formulas.length);
  const compute = (composition: Composition) => {
    const { members, amounts, total } = amountsOf(composition, facts);
    evaluate(members, amounts, total, into);
    return [into[0]!, ...into.subarray(1)] as const;
  };
  bound.set(facts, compute);
  return compute;
}

/** Where no class is likely enough, the likeliest alone: that nothing is likely is no answer. */
function likelyOf(classes: Probabilities): ClassName[] {
  const sorted = phaseClasses.toSorted((a, b) => classes[b] - classes[a]);
  return sorted.filter((name, place) => place === 0 || classes[name] >= likelyFrom);
}

const named: Readonly<Record<ClassName, string>> = {
  fcc: 'one fcc solution',
  bcc: 'one bcc solution',
  both: 'fcc beside bcc',
  other: 'something else',
};

function inWords(single: number, classes: Probabilities): string {
  const parts = phaseClasses
    .toSorted((a, b) => classes[b] - classes[a])
    .map((name) => `${named[name]} ${numberInWords(classes[name], 2)}`);
  return `Probability of one disordered solution ${numberInWords(single, 2)} (${parts.join(', ')}).`;
}

function narrowed(likely: readonly ClassName[]): string {
  return `At 80 % confidence: ${likely.map((name) => named[name]).join(' or ')}.`;
}

function thinly(distance: number): string {
  return ` The basis is weak: ${differing(distance)}.`;
}

function withoutBasis(distance: number): string {
  return distance > FARTHEST + ROUNDING
    ? `No basis for an estimate: ${differing(distance)}, and beyond ${percentInWords(FARTHEST)} too few are known to say what it is worth.`
    : 'No estimate for a pure element, and none where data of an element lack.';
}

function differing(distance: number): string {
  return `${percentInWords(distance, decimalsBeside(100 * distance, 100 * FARTHEST, 1))} of the atoms differ from the nearest published alloy with known phases`;
}
