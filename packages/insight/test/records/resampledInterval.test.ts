import { expect, test } from 'vitest';
import { resampledInterval } from '../../src/records/resampledInterval.ts';

const values = Array.from({ length: 400 }, (_, at) => (at % 4 === 0 ? 1 : 0));
const mean = (rows: readonly number[]) => rows.reduce((sum, row) => sum + values[row]!, 0) / rows.length;
const halfWidth = ([low, high]: readonly [number, number]) => (high - low) / 2;

// The share of a binomial sample has the standard error √(p(1 − p)/n); 1.96 of them on each side are 95 %.
test('the interval of a share is that of the binomial law', () => {
  const interval = resampledInterval(
    values.map((_, at) => `${at}`),
    mean,
  );
  expect(halfWidth(interval) / (1.96 * Math.sqrt((0.25 * 0.75) / 400))).toBeCloseTo(1, 0.7);
  expect((interval[0] + interval[1]) / 2).toBeCloseTo(0.25, 2);
});

test('four equal rows in a group double the interval', () => {
  const sorted = values.toSorted((a, b) => a - b);
  const meanSorted = (rows: readonly number[]) =>
    rows.reduce((sum, row) => sum + sorted[row]!, 0) / rows.length;
  const single = resampledInterval(
    sorted.map((_, at) => `${at}`),
    meanSorted,
  );
  const grouped = resampledInterval(
    sorted.map((_, at) => `${Math.floor(at / 4)}`),
    meanSorted,
  );
  expect(halfWidth(grouped) / halfWidth(single)).toBeGreaterThan(1.7);
  expect(halfWidth(grouped) / halfWidth(single)).toBeLessThan(2.3);
});

test('the same input has the same interval; draws without a value are left out', () => {
  const groups = ['a', 'b'];
  const different = (rows: readonly number[]) => (rows[0] === rows[1] ? Number.NaN : 5);
  expect(resampledInterval(groups, different)).toEqual([5, 5]);
  expect(
    resampledInterval(
      values.map((_, at) => `${at}`),
      mean,
    ),
  ).toEqual(
    resampledInterval(
      values.map((_, at) => `${at}`),
      mean,
    ),
  );
});
