import { expect, test } from 'vitest';
import {
  addCoefficients,
  coefficientsOf,
  multiplyCoefficients,
  subtractCoefficients,
} from '../../src/binding/coefficients.ts';

const of = (...values: number[]) => coefficientsOf(Float64Array.from(values));

test('short decimals are whole numbers over the smallest power of ten that will do', () => {
  expect(of(143.17, 142.9, 125).decimal).toEqual({ whole: Float64Array.of(14317, 14290, 12500), places: 2 });
  expect(of(8, -3).decimal).toEqual({ whole: Float64Array.of(8, -3), places: 0 });
  expect(of(0.000000001).decimal?.places).toBe(9);
});

test('a number that nine places do not write is no short decimal, and none of its company', () => {
  expect(of(1 / 3, 1).decimal).toBeNull();
  expect(of(0.0000000001).decimal).toBeNull();
  expect(of(0.1 + 0.2).decimal).toBeNull();
});

test('a missing value leaves the others what they are', () => {
  expect(of(1.5, Number.NaN).decimal).toEqual({ whole: Float64Array.of(15, Number.NaN), places: 1 });
});

test('decimals stay exact through differences and squares, where floating point loses them', () => {
  const difference = subtractCoefficients(of(143.17), of(142.9));
  const square = multiplyCoefficients(difference, difference);
  expect((143.17 - 142.9) ** 2).not.toBe(0.0729);
  expect(square.values[0]).toBe(0.0729);
  expect(square.decimal).toEqual({ whole: Float64Array.of(729), places: 4 });
});

test('zeros at the end are dropped after a calculation', () => {
  expect(multiplyCoefficients(of(0.5, 1.5), of(4, 4)).decimal).toEqual({
    whole: Float64Array.of(2, 6),
    places: 0,
  });
  expect(addCoefficients(of(0.25), of(0.75)).decimal).toEqual({ whole: Float64Array.of(1), places: 0 });
});

test('products that whole numbers no longer hold exactly fall back to plain numbers', () => {
  const mass = of(207.9766521);
  const product = multiplyCoefficients(multiplyCoefficients(mass, mass), mass);
  expect(product.decimal).toBeNull();
  expect(product.values[0]).toBeCloseTo(207.9766521 ** 3, 6);
});
