import { expect, test } from 'vitest';
import { limitTests } from '../../src/blocks/limitTests.ts';
import { limitRange } from '../../src/prepared/limitRange.ts';

const values = Float64Array.of(1, 2, 3, Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY);
const limits = [
  { output: 0, ...limitRange({ quantity: 'x', min: 2 }) },
  { output: 0, ...limitRange({ quantity: 'x', max: 2 }) },
];

test('an infinite value is no value: it meets no limit, on neither side, and is counted', () => {
  const tests = limitTests(limits, [values], [true], 6);
  expect(tests.test(6)).toBe(1);
  expect(tests.passing[0]).toBe(1);
  expect(tests.passedEach).toEqual([2, 2]);
  expect(tests.withoutValue).toEqual([3]);
});

test('counts add up over tests, and only the places asked for are tested', () => {
  const tests = limitTests(limits, [values], [true], 6);
  tests.test(2);
  expect(tests.test(3)).toBe(1);
  expect(tests.passedEach).toEqual([3, 4]);
  expect(tests.withoutValue).toEqual([0]);
});

test('without limits every place passes, in order', () => {
  const tests = limitTests([], [], [], 4);
  expect(tests.test(3)).toBe(3);
  expect(Array.from(tests.passing.subarray(0, 3))).toEqual([0, 1, 2]);
});
