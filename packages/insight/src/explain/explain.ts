import type { Facts } from '@tiegel/contract';
import { type OwnPair, ownPairSources, pairSources } from '@tiegel/elements';
import {
  type Composition,
  conditionNames,
  conditions as known,
  type QuantityValues,
  valuesOf,
} from '@tiegel/screening';
import { type Dossier, dossierOf } from '../dossier/dossierOf.ts';
import type { Recalibration } from '../phase/recalibration.ts';
import { type OwnPhase, ownPhaseOf } from '../records/ownRecalibration.ts';
import { type PairAffinity, pairAffinity } from '../regularSolution/pairAffinity.ts';
import { compositionParagraph } from './compositionParagraph.ts';
import { disagreementParagraph } from './disagreementParagraph.ts';
import { limitParagraph } from './limitParagraph.ts';
import { compoundParagraph, demixingParagraph, orderingParagraph, pairParagraph } from './modelParagraphs.ts';
import { ownParagraph } from './ownParagraph.ts';
import type { Paragraph, Told } from './paragraph.ts';
import { phaseParagraph } from './phaseParagraph.ts';
import { publishedParagraph } from './publishedParagraph.ts';
import { ruleParagraph } from './ruleParagraph.ts';
import { strengthParagraph } from './strengthParagraph.ts';

/** Everything that is said of one alloy, as numbers and as paragraphs for a person. */
export interface Explanation extends Dossier {
  composition: Composition;
  /** every one with the value that it has; null: none */
  conditions: Record<string, number | null>;
  quantities: QuantityValues;
  affinity: PairAffinity | null;
  /** the phase estimate recalibrated on melts of one's own; null where none were handed in */
  own: OwnPhase | null;
  paragraphs: Paragraph[];
}

/** What a laboratory knows of its own. */
interface OwnKnowledge {
  /** of the phase estimate on melts of one's own */
  recalibration?: Recalibration | null;
  /** pair values that the facts hold, for their sources */
  pairs?: readonly OwnPair[];
}

/** In the order in which a person reads them; what there is nothing to say of is left out. */
const paragraphs: readonly ((told: Told) => Paragraph | null)[] = [
  compositionParagraph,
  publishedParagraph,
  phaseParagraph,
  ownParagraph,
  disagreementParagraph,
  ruleParagraph,
  orderingParagraph,
  demixingParagraph,
  compoundParagraph,
  pairParagraph,
  strengthParagraph,
  limitParagraph,
];

/**
 * Tells an alloy's story: what it is, what is published of it, what the models say, where they
 * contradict the publications, and what is weak.
 *
 * @param composition at.%, 100 in sum
 * @param conditions by name, in the units of the conditions of packages/screening
 * @param known what a laboratory knows of its own, where that is to be heard
 * @throws RangeError for an element that the facts lack, a negative amount, or no element at all
 */
export function explain(
  composition: Composition,
  facts: Facts,
  conditions: Readonly<Record<string, number>> = {},
  { recalibration = null, pairs = [] }: OwnKnowledge = {},
): Explanation {
  const quantities = valuesOf(composition, facts, undefined, conditions);
  const dossier = dossierOf(composition, facts, conditions);
  const affinity = pairAffinity(composition, facts, conditions);
  const own = recalibration === null ? null : ownPhaseOf(dossier.phase, recalibration);
  const symbols = Object.keys(composition).filter((symbol) => composition[symbol]! > 0);
  const told: Told = {
    ...{ composition, facts, conditions, quantities, dossier, own, affinity },
    pairSources: { all: pairSources(symbols, pairs), own: ownPairSources(symbols, pairs) },
  };
  return {
    composition,
    conditions: Object.fromEntries(
      conditionNames.map((name) => [name, conditions[name] ?? known[name].default]),
    ),
    quantities,
    ...dossier,
    affinity,
    own,
    paragraphs: paragraphs.map((write) => write(told)).filter((one) => one !== null),
  };
}
