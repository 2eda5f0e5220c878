import {
  constant,
  divide,
  type Expression,
  exponential,
  greater,
  lesser,
  plus,
  times,
} from '../expression.ts';
import { phaseModel } from './data/phaseModel.ts';
import { weightedFeatures } from './phaseFeatures.ts';

/** Far outside the data the log odds grow without bound; beyond this no digit of a probability changes. */
const LARGEST_LOG_ODDS = 60;

const components = phaseModel.direction.map((weights, j) => weightedFeatures(weights, phaseModel.shift[j]!));

/** Log odds of a class against 'other'. */
function logOdds(k: number): Expression {
  const { offset, linear, quadratic } = phaseModel;
  const other = phaseModel.classes.indexOf('other');
  const difference = (row: readonly (readonly number[])[]) =>
    row[k]!.map((value, at) => value - row[other]![at]!);
  let sum = weightedFeatures(difference(linear), offset[k]! - offset[other]!);
  let at = 0;
  const curvature = difference(quadratic);
  for (let i = 0; i < components.length; i++) {
    for (let j = i; j < components.length; j++) {
      sum = plus(sum, times(curvature[at++]!, times(components[i]!, components[j]!)));
    }
  }
  return lesser(LARGEST_LOG_ODDS, greater(-LARGEST_LOG_ODDS, sum));
}

const odds = {
  fcc: exponential(logOdds(0)),
  bcc: exponential(logOdds(1)),
  both: exponential(logOdds(2)),
  other: constant(1),
};
const single = plus(odds.fcc, odds.bcc);
const several = plus(odds.both, odds.other);

/** The probability of one disordered fcc or bcc solution; written so that bounds of it are sharp. */
export const singlePhaseProbability: Expression = divide(1, plus(1, divide(several, single)));

/** The probability of each class, as a formula. */
export const phaseClassProbabilities: Readonly<Record<keyof typeof odds, Expression>> = {
  fcc: divide(odds.fcc, plus(single, several)),
  bcc: divide(odds.bcc, plus(single, several)),
  both: divide(odds.both, plus(single, several)),
  other: divide(odds.other, plus(single, several)),
};
