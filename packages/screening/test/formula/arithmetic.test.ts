import { expect, test } from 'vitest';
import { binaryValue, holds, powerValue, unaryValue } from '../../src/formula/arithmetic.ts';

test('a missing value spreads through every operator', () => {
  for (const operator of Object.values(binaryValue)) {
    expect(operator(Number.NaN, 1)).toBeNaN();
    expect(operator(1, Number.NaN)).toBeNaN();
  }
  for (const operator of Object.values(unaryValue)) expect(operator(Number.NaN)).toBeNaN();
  for (const exponent of [-1, 0, 0.5, 2]) expect(powerValue(Number.NaN, exponent)).toBeNaN();
  expect(holds(Number.NaN, '<', 1)).toBeNull();
  expect(holds(1, '<=', Number.NaN)).toBeNull();
});

test('a zero has no sign where it divides', () => {
  expect(binaryValue.divide(3, 0)).toBe(Number.POSITIVE_INFINITY);
  expect(binaryValue.divide(3, -0)).toBe(Number.POSITIVE_INFINITY);
  expect(binaryValue.divide(-3, -0)).toBe(Number.NEGATIVE_INFINITY);
  expect(binaryValue.divide(0, 0)).toBeNaN();
  expect(powerValue(-0, -1)).toBe(Number.POSITIVE_INFINITY);
});

test('roots and logarithms of negative numbers have no value; the logarithm of 0 is infinite', () => {
  expect(unaryValue.squareRoot(-1e-300)).toBeNaN();
  expect(unaryValue.logarithm(-1)).toBeNaN();
  expect(unaryValue.logarithm(0)).toBe(Number.NEGATIVE_INFINITY);
  expect(powerValue(-8, 1 / 3)).toBeNaN();
  expect(powerValue(Number.NEGATIVE_INFINITY, 0.5)).toBeNaN();
  expect(powerValue(-2, 3)).toBe(-8);
});
