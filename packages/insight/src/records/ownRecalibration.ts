import type { Facts } from '@tiegel/contract';
import { factsFor, symbols } from '@tiegel/elements';
import { atOnce } from '../atOnce.ts';
import { percentInWords } from '../inWords.ts';
import { type Phase, phaseOf } from '../phase/phaseOf.ts';
import {
  type MeltsNeeded,
  neededForLevel,
  type OwnAnswer,
  type Recalibration,
  recalibrated,
  recalibrationOf,
} from '../phase/recalibration.ts';
import type { ObservedAlloy } from './measureCriteria.ts';

/** What melts of one's own make of the estimate of an alloy. It stands beside the estimate and never in its place. */
export interface OwnPhase {
  /** null where melts are too few, or where the estimate itself has no basis */
  singleSolution: number | null;
  /** 95 %, of the recalibration alone */
  interval: readonly [low: number, high: number] | null;
  recalibration: Recalibration;
  /** what it was made from, or what is still missing */
  basis: string;
  /** the number and its basis as sentences */
  words: string;
}

/** Bound once, for that costs more than a thousand answers. */
let facts: Facts | null = null;
const allFacts = (): Facts => {
  facts ??= factsFor(symbols);
  return facts;
};

/** Share of atoms up to which a melt is an alloy that the estimate learnt from: what a weighing makes of a nominal composition. Ours, no source. */
const same = 0.005;

/**
 * The recalibration on melts of one's own: of those with observed phases, for which the estimate has a
 * number, and whose very composition it has not learnt from.
 */
export function ownRecalibration(melts: readonly ObservedAlloy[]): Recalibration {
  return atOnce(ownRecalibrationSteps(melts));
}

/** The same in steps of a melt each. */
export function* ownRecalibrationSteps(melts: readonly ObservedAlloy[]): Generator<undefined, Recalibration> {
  const answers: OwnAnswer[] = [];
  for (const { composition, system, singlePhase, phases } of melts) {
    if (phases === null || singlePhase === null) continue;
    const { singleSolution, nearestDistance } = phaseOf(composition, allFacts());
    if (singleSolution !== null && nearestDistance > same)
      answers.push({ probability: singleSolution, yes: singlePhase, system });
    yield;
  }
  return recalibrationOf(answers);
}

/** The estimate of an alloy, recalibrated on one's own melts. */
export function ownPhaseOf({ singleSolution }: Phase, recalibration: Recalibration): OwnPhase {
  const found = singleSolution === null ? null : recalibrated(singleSolution, recalibration);
  return {
    singleSolution: found?.singleSolution ?? null,
    interval: found?.interval ?? null,
    recalibration,
    basis: recalibrationInWords(recalibration),
    words: words(singleSolution, found, recalibration),
  };
}

function words(
  said: number | null,
  found: ReturnType<typeof recalibrated>,
  recalibration: Recalibration,
): string {
  if (recalibration.fit === null) return recalibrationInWords(recalibration);
  if (said === null || found === null)
    return 'Without a basis for the estimate there is nothing to recalibrate.';
  const [low, high] = found.interval;
  return (
    `Recalibrated on your own melts: one disordered solution with ${percentInWords(found.singleSolution)} ` +
    `(95 %: ${percentInWords(low)} to ${percentInWords(high)}), where the published estimate says ` +
    `${percentInWords(said)}. ${recalibrationInWords(recalibration)}`
  );
}

/** How far a recalibration is: what it was made from, or what is still missing. */
export function recalibrationInWords({ kind, counted, missing, fit }: Recalibration): string {
  const made = `${counted.melts} ${counted.melts === 1 ? 'melt' : 'melts'} of ${counted.systems} ${counted.systems === 1 ? 'system' : 'systems'}, ${counted.one} of one solution`;
  if (fit === null) {
    const { melts, systems, one, more } = neededForLevel;
    return (
      `Not yet recalibrated on melts of your own: still missing ${missingInWords(missing)}. Needed are ${melts} ` +
      `with observed phases that the estimate has not learnt from, of ${systems} systems, ${one} of one solution ` +
      `and ${more} of anything else; there are ${made}.`
    );
  }
  const shift =
    Math.abs(fit.intercept) < normalQuantile * Math.sqrt(fit.covariance[0])
      ? 'A shift of this size can be chance'
      : `The odds of one solution are ${fit.intercept > 0 ? 'higher' : 'lower'} here than the estimate says`;
  const how =
    kind === 'level'
      ? 'Its level was moved; how it sorts alloys is as published'
      : 'Level and slope were fitted';
  return (
    `Made from ${made}. ${how}. ${shift}. A laboratory’s melts are chosen: it holds for alloys like those, ` +
    'and the interval is that of the recalibration alone.'
  );
}

const normalQuantile = 1.96;

function missingInWords({ melts, systems, one, more }: MeltsNeeded): string {
  const parts = [
    [melts, melts === 1 ? 'melt' : 'melts'],
    [systems, systems === 1 ? 'system' : 'systems'],
    [one, 'of one solution'],
    [more, 'of anything else'],
  ] as const;
  return parts
    .filter(([count]) => count > 0)
    .map(([count, what]) => `${count} ${what}`)
    .join(', ');
}
