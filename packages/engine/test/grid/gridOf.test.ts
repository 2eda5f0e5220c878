import { expect, test } from 'vitest';
import { gridOf } from '../../src/index.ts';
import { specificationWith } from '../fixtures/specifications.ts';

test('the pool is alphabetical, with what is required and without what is forbidden', () => {
  const elements = { pool: ['Ni', 'Al', 'Fe'], require: ['Cr'], forbid: ['Fe', 'Cu'] };
  const grid = gridOf(specificationWith({ elements }));
  expect(grid.symbols).toEqual(['Al', 'Cr', 'Ni']);
  expect(grid.required).toEqual([false, true, false]);
});

test('bounds are parts, rounded inwards, overridden key by key, and at least one step', () => {
  const fractions = {
    step: 10,
    min: 4,
    max: 55,
    each: { Al: { max: 29 }, Co: { min: 11 }, Cr: { min: 0, max: 100 } },
  };
  const grid = gridOf(specificationWith({ fractions }));
  expect(grid.total).toBe(10);
  expect(grid.lowest).toEqual([1, 2, 1, 1, 1]);
  expect(grid.highest).toEqual([2, 5, 10, 5, 5]);
});

test('decimal noise moves no bound: 0.3 at.% in steps of 0.1 are three parts', () => {
  const fractions = { step: 0.1, min: 0.3, max: 0.7, each: {} };
  const grid = gridOf(specificationWith({ fractions }));
  expect([grid.lowest[0], grid.highest[0]]).toEqual([3, 7]);
});

test('an equimolar grid has one part of each element, whatever their number', () => {
  const grid = gridOf(specificationWith({ fractions: 'equimolar' }));
  expect(grid.total).toBeNull();
  expect(grid.lowest).toEqual(grid.highest);
});

test('sizes of systems without room are left out', () => {
  const room = (min: number, max: number) =>
    gridOf(specificationWith({ components: { min: 1, max: 5 }, fractions: { step: 5, min, max, each: {} } }))
      .components;
  expect(room(5, 100)).toEqual({ min: 1, max: 5 });
  expect(room(30, 100)).toEqual({ min: 1, max: 3 });
  expect(room(5, 30)).toEqual({ min: 4, max: 5 });
});

test('systems stay whole only where the best of each might be cut', () => {
  const elements = { pool: Array.from({ length: 40 }, (_, index) => `X${index}`), require: [], forbid: [] };
  const whole = (keepPerSystem: number, max: number) =>
    gridOf(specificationWith({ elements, components: { min: 3, max }, keepPerSystem })).wholeSystems;
  expect([whole(2, 5), whole(1, 5), whole(2, 3)]).toEqual([true, false, false]);
});
