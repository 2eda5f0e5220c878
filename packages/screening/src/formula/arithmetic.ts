import type { BinaryKind, Comparison, UnaryKind } from './expression.ts';

/**
 * What each operator computes, the same wherever a formula is evaluated. NaN (no value) spreads
 * through all of them. A zero has no sign: x/0 is +Infinity for x > 0 whether the zero came
 * about as 0 or as −0.
 */
export const binaryValue: Readonly<Record<BinaryKind, (left: number, right: number) => number>> = {
  add: (left, right) => left + right,
  subtract: (left, right) => left - right,
  multiply: (left, right) => left * right,
  divide: (left, right) => left / (right + 0), // −0 + 0 is 0
  lesser: Math.min,
  greater: Math.max,
};

export const unaryValue: Readonly<Record<UnaryKind, (of: number) => number>> = {
  negate: (of) => -of,
  squareRoot: Math.sqrt,
  absolute: Math.abs,
  exponential: Math.exp,
  logarithm: Math.log,
};

/** base to the exponent. Two answers of JavaScript are not taken: NaN ** 0 is 1, (−Infinity) ** 0.5 is Infinity. */
export function powerValue(base: number, exponent: number): number {
  const exists = base >= 0 || (base < 0 && Number.isInteger(exponent));
  return exists ? (base + 0) ** exponent : Number.NaN;
}

/** Whether a comparison holds; null where a side is missing. */
export function holds(left: number, operator: Comparison['operator'], right: number): boolean | null {
  if (Number.isNaN(left) || Number.isNaN(right)) return null;
  return operator === '<' ? left < right : left <= right;
}
