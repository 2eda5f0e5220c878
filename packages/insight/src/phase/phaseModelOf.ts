import { type PhaseModel, phaseFeatures } from '@tiegel/screening';
import type { FittedPhaseModel } from './fitPhaseModel.ts';
import { phaseClasses } from './trainingAlloys.ts';

/** Digits that the coefficients are written with: far more than the data justify, few enough to read. */
const DIGITS = 12;

/** The fitted model in the units of its features: what packages/screening makes its formula from. */
export function phaseModelOf({ mean, spread, weights }: FittedPhaseModel): PhaseModel {
  const rounded = (value: number) => Number(value.toPrecision(DIGITS));
  return {
    classes: phaseClasses,
    features: phaseFeatures.map(({ id }) => id),
    offset: weights.map((row) =>
      rounded(mean.reduce((sum, centre, f) => sum - (row[f]! * centre) / spread[f]!, row.at(-1)!)),
    ),
    weights: weights.map((row) => spread.map((one, f) => rounded(row[f]! / one))),
  };
}
