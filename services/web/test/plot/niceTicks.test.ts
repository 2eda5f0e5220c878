import fc from 'fast-check';
import { expect, test } from 'vitest';
import { niceExtent, niceTicks } from '../../src/plot/niceTicks.ts';

// Marks that a person would draw by hand on these axes.
test.each([
  [0, 1, 6, [0, 0.2, 0.4, 0.6, 0.8, 1]],
  [6.4, 8, 5, [6.5, 7, 7.5, 8]],
  [-15, 5, 5, [-15, -10, -5, 0, 5]],
  [1387, 2213, 6, [1400, 1600, 1800, 2000, 2200]],
  [0.9, 7.4, 4, [2, 4, 6]],
  [5.3, 8.4, 4, [6, 7, 8]],
  [0.0012, 0.0031, 5, [0.0015, 0.002, 0.0025, 0.003]],
])('an axis from %d to %d with at most %d marks has them at round values', (min, max, most, values) => {
  expect(niceTicks(min, max, most).values).toEqual(values);
});

test('an axis through zero has 0 there, never -0 or a trace of rounding', () => {
  const { values } = niceTicks(-0.3, 0.3, 7);
  expect(values.filter((value) => Math.abs(value) < 0.01)).toEqual([0]);
  expect(
    Object.is(
      values.find((value) => value === 0),
      0,
    ),
  ).toBe(true);
});

test('equal ends have their one value', () => {
  expect(niceTicks(7.25, 7.25)).toEqual({ values: [7.25], step: 0, decimals: 2 });
  const [from, to] = niceExtent(8, 8);
  expect(from).toBeLessThan(8);
  expect(to).toBeGreaterThan(8);
});

// Axes from a millionth of their values' size on: a shorter one would be told apart by no plot.
const ends = fc
  .tuple(fc.double({ min: -1e6, max: 1e6, noNaN: true }), fc.double({ min: 1e-6, max: 1e3, noNaN: true }))
  .map(([min, size]) => [min, min + size * Math.max(1e-3, Math.abs(min))] as const);

test('marks lie on the axis, evenly, no more than asked for, and two are never printed alike', () => {
  fc.assert(
    fc.property(ends, fc.integer({ min: 3, max: 12 }), ([min, max], most) => {
      const { values, step, decimals } = niceTicks(min, max, most);
      expect(values.length).toBeLessThanOrEqual(most);
      for (const value of values) {
        expect(value).toBeGreaterThanOrEqual(min - step * 1e-6);
        expect(value).toBeLessThanOrEqual(max + step * 1e-6);
      }
      expect(new Set(values.map((value) => value.toFixed(decimals))).size).toBe(values.length);
    }),
  );
});

test('a widened extent holds the values and begins and ends on marks', () => {
  fc.assert(
    fc.property(ends, ([min, max]) => {
      const [from, to] = niceExtent(min, max);
      const { step } = niceTicks(min, max);
      expect(from).toBeLessThanOrEqual(min + step * 1e-6);
      expect(to).toBeGreaterThanOrEqual(max - step * 1e-6);
      expect(Math.abs(from / step - Math.round(from / step))).toBeLessThan(1e-6);
    }),
  );
});
