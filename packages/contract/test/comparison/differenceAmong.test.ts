import { expect, test } from 'vitest';
import { differenceAmong, extremeOf } from '../../src/index.ts';

const typical = { low: 0, middle: 2, high: 4 };

test.each([
  [[1, 1, 1], 'none'],
  [[null, null], 'none'],
  [[1, 1.9], 'little'],
  [[1, 2], 'some'],
  [[1, 5], 'some'],
  [[1, 5.1], 'much'],
  [[1, null], 'much'],
] as const)('%o differ: %s', (values, difference) => {
  expect(differenceAmong(values, typical)).toBe(difference);
});

test('without a scale nobody can judge', () => {
  expect(differenceAmong([1, 2], null)).toBeNull();
  expect(differenceAmong([1, 1], null)).toBe('none');
});

test('the highest and the lowest are named, none where all are alike', () => {
  const values = [1, 3, null, 1];
  expect(values.map((value) => extremeOf(value, values))).toEqual(['lowest', 'highest', null, 'lowest']);
  expect(extremeOf(2, [2, 2])).toBeNull();
});
