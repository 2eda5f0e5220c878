import { expect, test } from 'vitest';
import { countPoints, prepare } from '../../src/index.ts';
import { calibrationSample } from '../../src/rate/calibrationSample.ts';
import { planOf } from '../fixtures/plans.ts';
import { specificationWith } from '../fixtures/specifications.ts';

const pool = ['Al', 'Co', 'Cr', 'Cu', 'Fe', 'Mn', 'Mo', 'Ni', 'Ti', 'V'];

/** All systems of five of ten elements, 252 of them. */
function gridOf(step: number) {
  return prepare(
    planOf(
      specificationWith({
        elements: { pool, require: [], forbid: [] },
        components: { min: 5, max: 5 },
        fractions: { step, min: step, max: 100, each: {} },
      }),
    ),
  );
}

test('small systems are gone through whole, some at each of many places', () => {
  // Of 3876 points each.
  const { chunks, points } = calibrationSample(gridOf(5), 10_000);
  expect(chunks.length).toBe(63);
  expect(chunks.every((one) => one.endPoint === null && one.points === 3 * 3876)).toBe(true);
  expect(points).toBe(63 * 3 * 3876);
});

test('large systems are gone through whole, two at each of fewer places', () => {
  // Of 211,876 points each.
  const prepared = gridOf(2);
  expect(Number(countPoints(prepared.grid)) / prepared.systems.count).toBe(211_876);
  const { chunks, points } = calibrationSample(prepared, 50_000);
  expect(chunks.length).toBeGreaterThanOrEqual(4);
  for (const { firstSystem, endSystem, endPoint } of chunks) {
    expect({ systems: endSystem - firstSystem, endPoint }).toEqual({ systems: 2, endPoint: null });
  }
  expect(points).toBeLessThanOrEqual(64 * 50_000);
  expect(points).toBeGreaterThan(64 * 50_000 * 0.7);
});

test('of very large systems the beginnings are', () => {
  const { chunks } = calibrationSample(gridOf(2), 5000);
  expect(chunks.length).toBe(63);
  expect(chunks.every((one) => one.points === 5000 && one.endPoint === 5000)).toBe(true);
});

test('chunks follow one another without overlapping', () => {
  for (const [step, points] of [
    [5, 1000],
    [5, 20_000],
    [2, 30_000],
  ] as const) {
    const { chunks } = calibrationSample(gridOf(step), points);
    const places = chunks.flatMap(({ firstSystem, endSystem }) => [firstSystem, endSystem]);
    expect(places).toEqual(places.toSorted((one, other) => one - other));
  }
});
