import { expect, test } from 'vitest';
import { binsOf } from '../../src/plot/binsOf.ts';
import { extentOf } from '../../src/plot/extentOf.ts';
import { linearScale } from '../../src/plot/linearScale.ts';

test('a value on an edge belongs to the bin above, on the last edge to the last bin', () => {
  expect(binsOf([0, 1, 1, 2, 3, 4], 0, 4, 4)).toEqual({ edges: [0, 1, 2, 3, 4], counts: [1, 2, 1, 2] });
});

test('missing values and values outside are in no bin', () => {
  expect(binsOf([null, -1, 9, 0.5], 0, 1, 2).counts).toEqual([0, 1]);
});

test('the extent leaves out what is missing, and is null where nothing is there', () => {
  expect(extentOf([3, null, -2])).toEqual([-2, 3]);
  expect(extentOf([null])).toBeNull();
});

test('a scale leads to the screen and back, upside down too', () => {
  const scale = linearScale(10, 20, 300, 0);
  expect(scale.at(10)).toBe(300);
  expect(scale.at(15)).toBe(150);
  expect(scale.valueAt(scale.at(17.3))).toBeCloseTo(17.3, 12);
});
