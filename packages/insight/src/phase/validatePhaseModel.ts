import { conformalCoverage } from './conformalCoverage.ts';
import { fitPhaseModel, phaseProbabilities } from './fitPhaseModel.ts';
import { groupedFolds } from './groupedFolds.ts';
import {
  type Answer,
  areaUnderCurve,
  balancedAccuracyAt,
  brierScore,
  brierSkill,
  calibrationError,
  logLoss,
  mean,
} from './scores.ts';
import type { TrainingAlloy } from './trainingAlloys.ts';

const FOLDS = 5;

/** Scores of one draw of the folds, or their means over several. */
export interface PhaseScores {
  auc: number;
  logLoss: number;
  brier: number;
  brierSkill: number;
  calibrationError: number;
  balancedAccuracy: number;
  /** share of alloys whose likeliest class of four is the reported one */
  fourClassAccuracy: number;
  /** share of one-phase alloys whose likelier class of fcc and bcc is the reported one */
  fccAgainstBcc: number;
  /** share of alloys whose reported class is in the set of classes that should hold 80 % of them */
  conformalCoverage: number;
  /** mean number of classes in that set */
  conformalSize: number;
}

/** A draw of the folds: the probabilities that each alloy got from a model that knew no alloy of its system. */
export interface Draw {
  seed: number;
  probabilities: number[][];
  scores: PhaseScores;
}

/** Leaves out whole element systems, five folds a draw, one draw a seed. */
export function validatePhaseModel(alloys: readonly TrainingAlloy[], seeds: readonly number[]): Draw[] {
  return seeds.map((seed) => {
    const { folds, probabilities } = outOfFold(alloys, seed);
    return { seed, probabilities, scores: scoresOf(alloys, probabilities, folds) };
  });
}

/** Means over draws. */
export function meanScores(draws: readonly Draw[]): PhaseScores {
  const names = Object.keys(draws[0]!.scores) as (keyof PhaseScores)[];
  return Object.fromEntries(
    names.map((name) => [name, mean(draws.map(({ scores }) => scores[name]))]),
  ) as unknown as PhaseScores;
}

/** Whether an alloy is one disordered solution, and the probability that was said of it. */
export function singlePhaseAnswers(
  alloys: readonly TrainingAlloy[],
  probabilities: readonly (readonly number[])[],
): Answer[] {
  return alloys.map(({ phaseClass }, at) => ({
    probability: probabilities[at]![0]! + probabilities[at]![1]!,
    yes: phaseClass < 2,
  }));
}

function outOfFold(alloys: readonly TrainingAlloy[], seed: number) {
  const folds = groupedFolds(
    alloys.map(({ alloy }) => alloy.system),
    alloys.map(({ phaseClass }) => phaseClass),
    { folds: FOLDS, seed },
  );
  const probabilities: number[][] = [];
  for (let fold = 0; fold < FOLDS; fold++) {
    const model = fitPhaseModel(alloys.filter((_, at) => folds[at] !== fold));
    alloys.forEach(({ features }, at) => {
      if (folds[at] === fold) probabilities[at] = phaseProbabilities(features, model);
    });
  }
  return { folds, probabilities };
}

function scoresOf(
  alloys: readonly TrainingAlloy[],
  probabilities: readonly (readonly number[])[],
  folds: readonly number[],
): PhaseScores {
  const answers = singlePhaseAnswers(alloys, probabilities);
  const classes = alloys.map(({ phaseClass }) => phaseClass);
  const single = classes.flatMap((one, at) => (one < 2 ? [at] : []));
  const { coverage, size } = conformalCoverage(probabilities, classes, folds);
  return {
    auc: areaUnderCurve(answers),
    logLoss: logLoss(answers),
    brier: brierScore(answers),
    brierSkill: brierSkill(answers),
    calibrationError: calibrationError(answers),
    balancedAccuracy: balancedAccuracyAt(answers, 0.5),
    fourClassAccuracy: mean(
      classes.map((one, at) => (probabilities[at]!.indexOf(Math.max(...probabilities[at]!)) === one ? 1 : 0)),
    ),
    fccAgainstBcc: mean(
      single.map((at) => (probabilities[at]![0]! > probabilities[at]![1]! === (classes[at] === 0) ? 1 : 0)),
    ),
    conformalCoverage: coverage,
    conformalSize: size,
  };
}
