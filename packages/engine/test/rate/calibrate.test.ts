import { expect, test } from 'vitest';
import { calibrate, prepare, roughRate } from '../../src/index.ts';
import { planOf } from '../fixtures/plans.ts';
import { specificationWith } from '../fixtures/specifications.ts';

test.each([
  ['one point', { components: { min: 5, max: 5 } }],
  ['many small systems', { components: { min: 1, max: 5 }, fractions: 'equimolar' as const }],
  [
    'few large systems',
    { components: { min: 5, max: 5 }, fractions: { step: 1, min: 1, max: 100, each: {} } },
  ],
])('a grid of %s yields a rate, and a rough one', (_, grid) => {
  for (const measured of [calibrate, roughRate]) {
    const rate = measured(prepare(planOf(specificationWith(grid))));
    expect(rate).toBeGreaterThan(0);
    expect(Number.isFinite(rate)).toBe(true);
  }
});

test('a grid without points yields none', () => {
  const grid = { components: { min: 3, max: 3 }, fractions: { step: 50, min: 50, max: 100, each: {} } };
  expect(calibrate(prepare(planOf(specificationWith(grid))))).toBeNull();
  expect(roughRate(prepare(planOf(specificationWith(grid))))).toBeNull();
});

test('a clock of steps so coarse that it never moves does not make a rate without end', () => {
  const wide = { components: { min: 5, max: 5 }, fractions: { step: 1, min: 1, max: 100, each: {} } };
  const prepared = prepare(planOf(specificationWith(wide)));
  for (const measured of [calibrate, roughRate]) {
    const rate = measured(prepared, () => 0);
    expect(rate).toBeGreaterThan(0);
    expect(Number.isFinite(rate)).toBe(true);
  }
});
