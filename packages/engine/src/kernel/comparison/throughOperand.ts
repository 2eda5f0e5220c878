import { EPSILON } from '../form.ts';
import type { Node } from '../node.ts';
import { ROUNDED } from '../slack.ts';
import type { Comparer, Relation } from './comparer.ts';
import { notNegative } from './hasValue.ts';
import { isUpper, mirrored } from './operator.ts';
import { all, any, never, type Test } from './test.ts';

/** Rules for operators of one operand: they are taken back. */
export function throughOperand(comparer: Comparer, { operation }: Node, relation: Relation): Test | null {
  switch (operation.kind) {
    case 'squareRoot':
      return throughRoot(comparer, operation.of, relation);
    case 'absolute':
      return throughAbsolute(comparer, operation.of, relation);
    case 'exponential':
      return throughExponential(comparer, operation.of, relation);
    case 'logarithm':
      return throughLogarithm(comparer, operation.of, relation);
    case 'power':
      return throughPower(comparer, operation.of, operation.exponent, relation);
    default:
      return null;
  }
}

function throughRoot(comparer: Comparer, of: Node, { operator, threshold, width }: Relation): Test {
  if (threshold + width < 0) return isUpper(operator) ? never : notNegative(comparer, of);
  const squared = threshold * threshold;
  const wider = (2 * Math.abs(threshold) + width) * width + 2 * ROUNDED * squared;
  const positive = Math.max(0, threshold);
  // What squares to 0 though it is more lies below every root but that of 0.
  const isTiny = positive > 0 && squared === 0;
  const side = isTiny ? (isUpper(operator) ? '<=' : '>') : operator;
  return all(notNegative(comparer, of), comparer.compare(of, side, positive * positive, wider));
}

function throughAbsolute({ compare }: Comparer, of: Node, { operator, threshold, width }: Relation): Test {
  const sides = [compare(of, operator, threshold, width), compare(of, mirrored[operator], -threshold, width)];
  return isUpper(operator) ? all(...sides) : any(...sides);
}

function throughExponential(
  { compare }: Comparer,
  of: Node,
  { operator, threshold, width }: Relation,
): Test | null {
  if (!(threshold - width > 0)) return null;
  const wider = (1.01 * width) / (threshold - width) + 16 * EPSILON;
  const exponent = Math.log(threshold);
  return compare(of, operator, exponent, wider + ROUNDED * Math.abs(exponent));
}

function throughLogarithm(
  comparer: Comparer,
  of: Node,
  { operator, threshold, width }: Relation,
): Test | null {
  const power = Math.exp(threshold);
  if (!(width < 0.01) || !(power > 1e-300 && power < 1e300)) return null;
  const wider = power * (1.1 * width + ROUNDED * (1 + Math.abs(threshold)));
  return all(notNegative(comparer, of), comparer.compare(of, operator, power, wider));
}

function throughPower(
  { compare }: Comparer,
  of: Node,
  exponent: number,
  { operator, threshold, width }: Relation,
): Test | null {
  if (!(threshold - width > 0) || exponent === 0 || of.low < 0 || (exponent < 0 && of.least === 0))
    return null;
  const root = threshold ** (1 / exponent);
  if (!(root > 1e-300 && root < 1e300)) return null;
  const relative = width / (threshold - width) + 16 * EPSILON;
  const wider = 1.1 * root * (relative / Math.abs(exponent) + ROUNDED);
  if (!(relative / Math.abs(exponent) < 0.01)) return null;
  return compare(of, exponent > 0 ? operator : mirrored[operator], root, wider);
}
