import { expect, test } from 'vitest';
import { prepare, unreachableLimits } from '../../src/index.ts';
import { planOf } from '../fixtures/plans.ts';
import { specificationWith } from '../fixtures/specifications.ts';

test('a limit beyond what the grid can reach is named with the bounds that prove it', () => {
  const limits = [
    { quantity: 'density', max: 1 },
    { quantity: 'density', max: 8 },
    { quantity: 'valenceElectronConcentration', min: 12 },
  ];
  const found = unreachableLimits(prepare(planOf(specificationWith({ limits }))));
  expect(found.map(({ index }) => index)).toEqual([0, 2]);
  expect(found[0]!.low).toBeGreaterThan(1);
  // Nickel, with 10 valence electrons, has most of the pool.
  expect(found[1]!.high).toBeGreaterThanOrEqual(9.4);
  expect(found[1]!.high).toBeLessThanOrEqual(10);
});

test('a limit that a single point meets exactly is never called out of reach', () => {
  // Equal parts of five: the only point of five elements at 20 at.%.
  const only = { components: { min: 5, max: 5 }, fractions: { step: 20, min: 20, max: 20, each: {} } };
  const limits = [{ quantity: 'valenceElectronConcentration', min: 7.2, max: 7.2 }]; // (3 + 9 + 6 + 8 + 10) / 5
  expect(unreachableLimits(prepare(planOf(specificationWith({ ...only, limits }))))).toEqual([]);
});

test('the equimolar grid is bounded over all its sizes', () => {
  const grid = { components: { min: 1, max: 2 }, fractions: 'equimolar' as const };
  const limits = [
    { quantity: 'valenceElectronConcentration', min: 10 }, // nickel alone
    { quantity: 'valenceElectronConcentration', min: 10.1 },
  ];
  expect(
    unreachableLimits(prepare(planOf(specificationWith({ ...grid, limits })))).map(({ index }) => index),
  ).toEqual([1]);
});
