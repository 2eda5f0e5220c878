import { CholeskyDecomposition, Matrix } from 'ml-matrix';

/** Weights of a multinomial logistic model: one row a class, one column an input, the intercept last. */
export type ClassWeights = readonly (readonly number[])[];

const MOST_STEPS = 50;
/** Newton's method has converged when no weight moves by more. */
const SMALL_STEP = 1e-9;
/** The intercepts are not shrunk; this much makes the solution unique, since only their differences count. */
const INTERCEPT_PENALTY = 1e-3;

/** Probabilities of the classes for one row of inputs. */
export function classProbabilities(weights: ClassWeights, inputs: ArrayLike<number>): number[] {
  const logits = weights.map((row) => {
    let sum = row.at(-1)!;
    for (let f = 0; f < inputs.length; f++) sum += row[f]! * inputs[f]!;
    return sum;
  });
  const largest = Math.max(...logits);
  const odds = logits.map((logit) => Math.exp(logit - largest));
  const total = odds.reduce((a, b) => a + b);
  return odds.map((one) => one / total);
}

/**
 * Fits p(class) ∝ exp(w_class · inputs) by penalised maximum likelihood: log likelihood less
 * penalty/2 Σ w². Strictly convex, so the result depends on nothing but the data. Newton's method.
 *
 * @param targets for each row how much evidence it is for each class: 1 in all for one observation
 * @source Hastie, Tibshirani & Friedman, The Elements of Statistical Learning, 2nd ed. (2009), section 4.4 (from memory)
 */
export function fitMultinomial(
  rows: readonly ArrayLike<number>[],
  targets: readonly (readonly number[])[],
  penalty: number,
): ClassWeights {
  const width = rows[0]!.length + 1;
  const padded = rows.map((row) => Float64Array.from([...Array.from(row), 1]));
  const weights = targets[0]!.map(() => new Array<number>(width).fill(0));
  for (let step = 0; step < MOST_STEPS; step++) {
    const { gradient, curvature } = derivatives(padded, targets, weights, penalty);
    const move = new CholeskyDecomposition(curvature).solve(Matrix.columnVector(gradient));
    let largest = 0;
    weights.forEach((row, k) => {
      for (let f = 0; f < width; f++) {
        const by = move.get(k * width + f, 0);
        row[f]! -= by;
        largest = Math.max(largest, Math.abs(by));
      }
    });
    if (largest < SMALL_STEP) return weights;
  }
  throw new Error(`The fit did not settle in ${MOST_STEPS} steps.`);
}

/** Gradient and second derivatives of the penalised negative log likelihood. */
function derivatives(
  rows: readonly Float64Array[],
  targets: readonly (readonly number[])[],
  weights: readonly (readonly number[])[],
  penalty: number,
): { gradient: number[]; curvature: Matrix } {
  const width = rows[0]!.length;
  const size = weights.length * width;
  const shrink = (f: number) => (f === width - 1 ? INTERCEPT_PENALTY : penalty);
  const gradient = weights.flatMap((row) => row.map((weight, f) => shrink(f) * weight));
  const curvature = new Float64Array(size * size);
  rows.forEach((row, at) => {
    const target = targets[at]!;
    const weight = target.reduce((a, b) => a + b);
    const p = classProbabilities(weights, row.subarray(0, width - 1));
    for (let k = 0; k < weights.length; k++) {
      const miss = weight * p[k]! - target[k]!;
      for (let f = 0; f < width; f++) gradient[k * width + f]! += miss * row[f]!;
      for (let l = 0; l <= k; l++) {
        const both = weight * p[k]! * ((k === l ? 1 : 0) - p[l]!);
        for (let f = 0; f < width; f++) {
          const from = (k * width + f) * size + l * width;
          const factor = both * row[f]!;
          for (let g = 0; g < width; g++) curvature[from + g]! += factor * row[g]!;
        }
      }
    }
  });
  const matrix = Matrix.zeros(size, size);
  for (let i = 0; i < size; i++) {
    for (let j = 0; j <= i; j++) {
      const value = curvature[i * size + j]! + (i === j ? shrink(i % width) : 0);
      matrix.set(i, j, value);
      matrix.set(j, i, value);
    }
  }
  return { gradient, curvature: matrix };
}
