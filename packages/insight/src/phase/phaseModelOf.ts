import { type PhaseModel, phaseFeatures } from '@tiegel/screening';
import type { FittedPhaseModel } from './fitPhaseModel.ts';
import { phaseClasses } from './trainingAlloys.ts';

/** Digits that the coefficients are written with: far more than the data justify, few enough to read. */
const DIGITS = 12;

/** The fitted model in the units of its features: what packages/screening makes its formula from. */
export function phaseModelOf({ features, directions, products, weights }: FittedPhaseModel): PhaseModel {
  const perUnit = (row: readonly number[]) => features.mean.map((_, f) => row[f]! / features.spread[f]!);
  const centre = (row: readonly number[]) =>
    features.mean.reduce((sum, mean, f) => sum - (row[f]! * mean) / features.spread[f]!, 0);
  const curved = (row: readonly number[]) => row.slice(features.mean.length, -1);
  const rounded = (value: number) => Number(value.toPrecision(DIGITS));
  return {
    classes: phaseClasses,
    features: phaseFeatures.map(({ id }) => id),
    offset: weights.map((row) =>
      rounded(
        curved(row).reduce(
          (sum, weight, k) => sum - (weight * products.mean[k]!) / products.spread[k]!,
          row.at(-1)! + centre(row),
        ),
      ),
    ),
    linear: weights.map((row) => perUnit(row).map(rounded)),
    quadratic: weights.map((row) => curved(row).map((weight, k) => rounded(weight / products.spread[k]!))),
    shift: directions.map((row) => rounded(centre(row))),
    direction: directions.map((row) => perUnit(row).map(rounded)),
  };
}
