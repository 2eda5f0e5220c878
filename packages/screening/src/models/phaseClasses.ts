import {
  constant,
  divide,
  type Expression,
  exponential,
  greater,
  lesser,
  plus,
} from '../formula/expression.ts';
import { phaseModel } from './data/phaseModel.ts';
import { weightedFeatures } from './phaseFeatures.ts';

/** Far outside the data the log odds grow without bound; beyond this no digit of a probability changes. */
const LARGEST_LOG_ODDS = 60;

/** Log odds of a class against 'other'. */
function logOdds(k: number): Expression {
  const { offset, weights } = phaseModel;
  const other = phaseModel.classes.indexOf('other');
  const difference = weights[k]!.map((weight, at) => weight - weights[other]![at]!);
  const sum = weightedFeatures(difference, offset[k]! - offset[other]!);
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
