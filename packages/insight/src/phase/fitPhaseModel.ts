import { EigenvalueDecomposition, Matrix } from 'ml-matrix';
import { type ClassWeights, classProbabilities, fitMultinomial } from './multinomial.ts';
import { reportedEvidence } from './reportedEvidence.ts';
import type { TrainingAlloy } from './trainingAlloys.ts';

/** How many principal components enter with their products. */
const COMPONENTS = 8;
/** Shrinkage of the weights, for standardised inputs. */
const PENALTY = 10;

interface Scale {
  mean: number[];
  spread: number[];
}

/**
 * A fitted phase model: a multinomial logistic model in the standardised features and in the
 * products of their first principal components.
 */
export interface FittedPhaseModel {
  features: Scale;
  /** one row a component, over the standardised features */
  directions: number[][];
  products: Scale;
  weights: ClassWeights;
}

/** Fits the model to alloys. Deterministic. */
export function fitPhaseModel(alloys: readonly TrainingAlloy[]): FittedPhaseModel {
  const rows = alloys.map(({ features }) => features);
  const features = scaleOf(rows);
  const standardised = rows.map((row) => standardise(row, features));
  const directions = principalDirections(standardised);
  const products = scaleOf(standardised.map((row) => productsOf(row, directions)));
  const model = { features, directions, products, weights: [] };
  const inputs = rows.map((row) => inputsOf(row, model));
  return { ...model, weights: fitMultinomial(inputs, reportedEvidence(alloys), PENALTY) };
}

/** Probabilities of the four classes for one row of features. */
export function phaseProbabilities(row: readonly number[], model: FittedPhaseModel): number[] {
  return classProbabilities(model.weights, inputsOf(row, model));
}

function inputsOf(row: readonly number[], model: Omit<FittedPhaseModel, 'weights'>): number[] {
  const standardised = standardise(row, model.features);
  return [...standardised, ...standardise(productsOf(standardised, model.directions), model.products)];
}

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

/** The leading eigenvectors of the correlation matrix, each with its largest entry positive. */
function principalDirections(standardised: readonly (readonly number[])[]): number[][] {
  const matrix = new Matrix(standardised.map((row) => [...row]));
  const correlation = matrix.transpose().mmul(matrix).div(standardised.length);
  const { realEigenvalues, eigenvectorMatrix } = new EigenvalueDecomposition(correlation, {
    assumeSymmetric: true,
  });
  return realEigenvalues
    .map((value, at) => ({ value, direction: eigenvectorMatrix.getColumn(at) }))
    .sort((a, b) => b.value - a.value)
    .slice(0, COMPONENTS)
    .map(({ direction }) => {
      const largest = direction.reduce((a, b) => (Math.abs(b) > Math.abs(a) ? b : a));
      return direction.map((entry) => entry * Math.sign(largest));
    });
}

function productsOf(standardised: readonly number[], directions: readonly (readonly number[])[]): number[] {
  const scores = directions.map((direction) =>
    direction.reduce((sum, d, f) => sum + d * standardised[f]!, 0),
  );
  return scores.flatMap((one, i) => scores.slice(i).map((other) => one * other));
}
