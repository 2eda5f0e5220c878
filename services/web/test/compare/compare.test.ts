import { expect, test } from 'vitest';
import { compareAddress } from '../../src/compare/compareAddress.ts';
import { readCompareView, writeCompareView } from '../../src/compare/compareView.ts';
import { differenceOf, extremeOf } from '../../src/compare/differenceOf.ts';

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
  expect(differenceOf(values, typical)).toBe(difference);
});

test('without a scale nobody can judge', () => {
  expect(differenceOf([1, 2], null)).toBeNull();
  expect(differenceOf([1, 1], null)).toBe('none');
});

test('the highest and the lowest are named, none where all are alike', () => {
  const values = [1, 3, null, 1];
  expect(values.map((value) => extremeOf(value, values))).toEqual(['lowest', 'highest', null, 'lowest']);
  expect(extremeOf(2, [2, 2])).toBeNull();
});

test('a comparison comes back from its address, each alloy once and canonical', () => {
  const view = readCompareView(
    'alloy=CoNi&alloy=Ni50Co50&alloy=Fe3Ni&alloy=?&search=ab&only=different&grainSize=4',
  );
  expect(view).toEqual({
    alloys: ['Co50Ni50', 'Fe75Ni25'],
    unreadable: ['?'],
    conditions: { grainSize: 4 },
    search: 'ab',
    onlyDifferent: true,
  });
  expect(readCompareView(writeCompareView(view))).toEqual({ ...view, unreadable: [] });
  expect(readCompareView(compareAddress(['Co50Ni50'], {}, 'ab').split('?')[1]!).search).toBe('ab');
});
