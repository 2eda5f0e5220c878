import { compositionDistance } from '../neighbours/compositionDistance.ts';
import { resampledInterval } from '../records/resampledInterval.ts';
import { conformalThreshold } from './conformalCoverage.ts';
import {
  type Answer,
  areaUnderCurve,
  areaUnderCurveOf,
  balancedAccuracyAt,
  baseRate,
  brierSkill,
  mean,
  type ReliabilityBin,
  reliability,
} from './scores.ts';
import type { TrainingAlloy } from './trainingAlloys.ts';
import { type Draw, meanScores, type PhaseScores, singlePhaseAnswers } from './validatePhaseModel.ts';

/** How the estimate did on alloys of systems that it had not seen. */
export interface PhaseReport {
  alloys: number;
  systems: number;
  draws: number;
  baseRate: number;
  /** means over the draws */
  scores: PhaseScores;
  /** of the first draw alone, so that it can be checked without repeating them all */
  firstDraw: PhaseScores;
  /** The least probability with which a class belongs to the set that should hold 80 % of the reported ones. */
  likelyFrom: number;
  /** standard deviation of the AUC from draw to draw */
  aucSpread: number;
  /** 95 %, from resampling whole systems */
  intervals: Readonly<Record<'auc' | 'brierSkill' | 'balancedAccuracy', readonly [number, number]>>;
  reliability: readonly ReliabilityBin[];
  /** by distance to the nearest alloy of another system */
  byDistance: readonly {
    from: number;
    to: number;
    alloys: number;
    auc: number | null;
    brierSkill: number | null;
  }[];
}

const balancedAccuracy = (answers: readonly Answer[]) => balancedAccuracyAt(answers, 0.5);

const distanceBands = [0, 0.1, 0.15, 0.22, 1];

/** Gathers what the draws of a validation showed. Deterministic. */
export function phaseReport(alloys: readonly TrainingAlloy[], draws: readonly Draw[]): PhaseReport {
  const answers = meanAnswers(alloys, draws);
  const scores = meanScores(draws);
  return {
    alloys: alloys.length,
    systems: new Set(alloys.map(({ alloy }) => alloy.system)).size,
    draws: draws.length,
    baseRate: baseRate(answers),
    scores,
    firstDraw: draws[0]!.scores,
    likelyFrom: conformalThreshold(
      draws.flatMap(({ probabilities }) =>
        alloys.map(({ phaseClass }, at) => probabilities[at]![phaseClass]!),
      ),
    ),
    aucSpread: Math.sqrt(mean(draws.map((draw) => (draw.scores.auc - scores.auc) ** 2))),
    intervals: intervals(alloys, answers),
    reliability: reliability(draws.flatMap((draw) => singlePhaseAnswers(alloys, draw.probabilities))).map(
      (bin) => ({ ...bin, count: bin.count / draws.length }),
    ),
    byDistance: byDistance(alloys, answers),
  };
}

/** The mean over the draws of what was said of each alloy. */
function meanAnswers(alloys: readonly TrainingAlloy[], draws: readonly Draw[]): Answer[] {
  const said = draws.map(({ probabilities }) => singlePhaseAnswers(alloys, probabilities));
  return alloys.map((_, at) => ({
    probability: mean(said.map((answers) => answers[at]!.probability)),
    yes: said[0]![at]!.yes,
  }));
}

function intervals(alloys: readonly TrainingAlloy[], answers: readonly Answer[]): PhaseReport['intervals'] {
  const systems = alloys.map(({ alloy }) => alloy.system);
  const of = (score: (answers: readonly Answer[]) => number) =>
    resampledInterval(systems, (rows) => score(rows.map((at) => answers[at]!)));
  return {
    auc: resampledInterval(systems, areaUnderCurveOf(answers)),
    brierSkill: of(brierSkill),
    balancedAccuracy: of(balancedAccuracy),
  };
}

function byDistance(alloys: readonly TrainingAlloy[], answers: readonly Answer[]): PhaseReport['byDistance'] {
  const distances = alloys.map(({ alloy }) =>
    Math.min(
      ...alloys
        .filter((other) => other.alloy.system !== alloy.system)
        .map((other) => compositionDistance(alloy.composition, other.alloy.composition)),
    ),
  );
  return distanceBands.slice(1).map((to, band) => {
    const from = distanceBands[band]!;
    const inside = answers.filter((_, at) => distances[at]! > from && distances[at]! <= to);
    const both = inside.some(({ yes }) => yes) && inside.some(({ yes }) => !yes);
    return {
      ...{ from, to, alloys: inside.length },
      auc: both ? areaUnderCurve(inside) : null,
      brierSkill: both ? brierSkill(inside) : null,
    };
  });
}
