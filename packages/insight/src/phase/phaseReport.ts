import { compositionDistance } from '../neighbours/compositionDistance.ts';
import { seededRandom } from './groupedFolds.ts';
import {
  type Answer,
  areaUnderCurve,
  baseRate,
  brierSkill,
  mean,
  type ReliabilityBin,
  reliability,
} from './scores.ts';
import type { TrainingAlloy } from './trainingAlloys.ts';
import { type Draw, meanScores, type PhaseScores, singlePhaseAnswers } from './validatePhaseModel.ts';

const RESAMPLES = 1000;

/** How the estimate did on alloys of systems that it had not seen. */
export interface PhaseReport {
  alloys: number;
  systems: number;
  draws: number;
  baseRate: number;
  /** means over the draws */
  scores: PhaseScores;
  /** standard deviation of the AUC from draw to draw */
  aucSpread: number;
  /** 95 %, from resampling whole systems */
  intervals: { auc: [number, number]; brierSkill: [number, number] };
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
  const groups = [...Map.groupBy(answers.keys(), (at) => alloys[at]!.alloy.system).values()];
  const random = seededRandom(0);
  const samples = Array.from({ length: RESAMPLES }, () =>
    groups.flatMap(() => groups[Math.floor(random() * groups.length)]!).map((at) => answers[at]!),
  );
  return { auc: middle95(samples.map(areaUnderCurve)), brierSkill: middle95(samples.map(brierSkill)) };
}

function middle95(values: readonly number[]): [number, number] {
  const sorted = values.toSorted((a, b) => a - b);
  const at = (share: number) => sorted[Math.round(share * (sorted.length - 1))]!;
  return [at(0.025), at(0.975)];
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
