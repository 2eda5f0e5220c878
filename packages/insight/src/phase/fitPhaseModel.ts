import { type ClassWeights, classProbabilities, fitMultinomial } from './multinomial.ts';
import { reportedEvidence } from './reportedEvidence.ts';
import type { TrainingAlloy } from './trainingAlloys.ts';

/** Shrinkage of the weights, for standardised features. */
const PENALTY = 0.5;

/** A fitted phase model: a multinomial logistic model in the standardised features. */
export interface FittedPhaseModel {
  /** of each feature over the training alloys */
  mean: number[];
  spread: number[];
  weights: ClassWeights;
}

/** Fits the model to alloys. Deterministic. */
export function fitPhaseModel(alloys: readonly TrainingAlloy[]): FittedPhaseModel {
  const rows = alloys.map(({ features }) => features);
  const scale = scaleOf(rows);
  const inputs = rows.map((row) => standardise(row, scale));
  return { ...scale, weights: fitMultinomial(inputs, reportedEvidence(alloys), PENALTY) };
}

/** Probabilities of the four classes for one row of features. */
export function phaseProbabilities(row: readonly number[], model: FittedPhaseModel): number[] {
  return classProbabilities(model.weights, standardise(row, model));
}

type Scale = Pick<FittedPhaseModel, 'mean' | 'spread'>;

function scaleOf(rows: readonly (readonly number[])[]): Scale {
  const mean = rows[0]!.map((_, f) => rows.reduce((sum, row) => sum + row[f]!, 0) / rows.length);
  const spread = mean.map((centre, f) =>
    Math.sqrt(rows.reduce((sum, row) => sum + (row[f]! - centre) ** 2, 0) / rows.length),
  );
  return { mean, spread };
}

function standardise(row: readonly number[], { mean, spread }: Scale): number[] {
  return row.map((value, f) => (value - mean[f]!) / spread[f]!);
}
