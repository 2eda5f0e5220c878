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

/** base to the exponent; in JavaScript alone NaN ** 0 would be 1. */
export function powerValue(base: number, exponent: number): number {
  return Number.isNaN(base) ? Number.NaN : (base + 0) ** exponent;
}

/** Whether a comparison holds; null where a side is missing. */
export function holds(left: number, operator: Comparison['operator'], right: number): boolean | null {
  if (Number.isNaN(left) || Number.isNaN(right)) return null;
  return operator === '<' ? left < right : left <= right;
}
