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

test('the highest and the lowest are named, none where all are alike, or nearly, or no numbers', () => {
  const cells = [1, 3, null, 1].map((value) => ({ value, text: '' }));
  const marks = (difference: 'little' | 'some', numeric = true) =>
    cells.map((_, at) => extremeOf({ cells, difference, numeric }, at));
  expect(marks('some')).toEqual(['lowest', 'highest', null, 'lowest']);
  expect(marks('little')).toEqual([null, null, null, null]);
  expect(marks('some', false)).toEqual([null, null, null, null]);
  const alike = { cells: [cells[0]!, cells[0]!], difference: null, numeric: true };
  expect(extremeOf(alike, 0)).toBeNull();
});
