import { expect, test } from 'vitest';
import { meetsLimit } from '../../src/specification/meetsLimit.ts';

test('a limit is inclusive on both sides', () => {
  const limit = { quantity: 'density', min: 7, max: 8 };
  expect([6.9, 7, 7.5, 8, 8.1].map((value) => meetsLimit(value, limit))).toEqual([
    false,
    true,
    true,
    true,
    false,
  ]);
});

test('a value within 1e-12 of a limit, or of its size above 1, lies on it', () => {
  expect(meetsLimit(8 + 7e-12, { quantity: 'density', max: 8 })).toBe(true);
  expect(meetsLimit(8 + 9e-12, { quantity: 'density', max: 8 })).toBe(false);
  expect(meetsLimit(-15 - 1.4e-11, { quantity: 'mixingEnthalpy', min: -15 })).toBe(true);
  expect(meetsLimit(-2e-12, { quantity: 'mixingEnthalpy', min: 0 })).toBe(false);
});

test('without a value there is no verdict', () => {
  expect(meetsLimit(null, { quantity: 'density', max: 8 })).toBeNull();
});
