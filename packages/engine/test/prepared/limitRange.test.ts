import fc from 'fast-check';
import { expect, test } from 'vitest';
import { doubleAt, placeOf } from '../../src/prepared/doubleOrder.ts';
import { limitRange } from '../../src/prepared/limitRange.ts';

/** The rule in words: at least, or on the limit. */
const meetsMin = (value: number, min: number) =>
  value >= min || Math.abs(value - min) <= 1e-12 * Math.max(1, Math.abs(min));

const limits = fc.oneof(
  fc.double({ noNaN: true, noDefaultInfinity: true }),
  fc.double({ min: -100, max: 100, noNaN: true }),
  fc.integer({ min: -100, max: 100 }),
  // Where the tolerance ends at 0, and doubles are densest.
  fc.constantFrom(1e-12, -1e-12, 1e-12 + 1e-28, 0, -0, Number.MAX_VALUE, -Number.MAX_VALUE),
);

test('the ends of the range are the last numbers that meet the rule', () => {
  fc.assert(
    fc.property(limits, (limit) => {
      const { least } = limitRange({ quantity: 'x', min: limit });
      expect(meetsMin(least, limit)).toBe(true);
      expect(meetsMin(numberBelow(least), limit) && Number.isFinite(numberBelow(least))).toBe(false);
      const { greatest } = limitRange({ quantity: 'x', max: limit });
      expect(meetsMin(-greatest, -limit)).toBe(true);
      expect(meetsMin(-numberAbove(greatest), -limit) && Number.isFinite(numberAbove(greatest))).toBe(false);
    }),
    { numRuns: 2000 },
  );
});

test('a side that is open lets every finite number pass, and only those', () => {
  const { least, greatest } = limitRange({ quantity: 'x', max: 3 });
  expect(least).toBe(-Number.MAX_VALUE);
  expect([Number.NEGATIVE_INFINITY, Number.NaN].some((value) => value >= least && value <= greatest)).toBe(
    false,
  );
});

test.each([
  [0, Number.MIN_VALUE],
  [1, 1 + Number.EPSILON],
  [-Number.MIN_VALUE, 0],
  [-2, -2 + Number.EPSILON],
  [Number.MAX_VALUE, Number.POSITIVE_INFINITY],
])('the double above %d is %d', (value, above) => {
  expect(numberAbove(value) === above).toBe(true);
  expect(numberBelow(above) === value).toBe(true);
});

test('doubles and their places lead to each other', () => {
  fc.assert(
    fc.property(fc.double({ noNaN: true }), (value) => {
      expect(doubleAt(placeOf(value)) === value).toBe(true);
    }),
  );
});

function numberAbove(value: number): number {
  return doubleAt(placeOf(value) + 1n);
}

function numberBelow(value: number): number {
  return doubleAt(placeOf(value) - 1n);
}
