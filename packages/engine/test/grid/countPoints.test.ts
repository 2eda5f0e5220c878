import fc from 'fast-check';
import { expect, test } from 'vitest';
import { countPoints, gridOf } from '../../src/index.ts';
import { everyPoint } from '../fixtures/everyPoint.ts';
import { smallGrids, specificationWith } from '../fixtures/specifications.ts';

const letters = Array.from({ length: 30 }, (_, index) => `X${String(index).padStart(2, '0')}`);

function gridWith(elements: number, components: number | { min: number; max: number }, step: number) {
  return gridOf(
    specificationWith({
      elements: { pool: letters.slice(0, elements), require: [], forbid: [] },
      components: typeof components === 'number' ? { min: components, max: components } : components,
      fractions: { step, min: step, max: 100, each: {} },
    }),
  );
}

test('small grids are counted as plain enumeration finds them', () => {
  fc.assert(
    fc.property(smallGrids, (specification) => {
      expect(countPoints(gridOf(specification))).toBe(BigInt(everyPoint(specification).length));
    }),
    { numRuns: 300 },
  );
});

// Stars and bars: C(pool, n) systems of C(S − 1, n − 1) ways to write S as n positive parts.
test.each([
  [20, 5, 1],
  [20, 5, 5],
  [30, 10, 0.1],
  [12, 7, 0.5],
  [23, 7, 0.5], // just beyond 2^53, and not a double
  [7, 1, 2.5],
])('%i elements, %i at a time, in steps of %d at.% follow the closed form', (elements, size, step) => {
  const parts = Math.round(100 / step);
  const expected = choose(elements, size) * choose(parts - 1, size - 1);
  expect(countPoints(gridWith(elements, size, step))).toBe(expected);
});

test('C(20,5) at 1 at.% are 15,504 times 3,764,376 points', () => {
  expect(countPoints(gridWith(20, 5, 1))).toBe(58_362_885_504n);
});

test('counts far beyond 2^53 are exact, too', () => {
  const sizes = [2, 3, 4, 5, 6, 7, 8, 9, 10];
  const expected = sizes.reduce((sum, size) => sum + choose(30, size) * choose(999, size - 1), 0n);
  expect(expected > 2n ** 90n).toBe(true);
  expect(countPoints(gridWith(30, { min: 2, max: 10 }, 0.1))).toBe(expected);
});

test('a grid of one point among astronomically many combinations within wider bounds is one point', () => {
  const grid = gridOf(
    specificationWith({
      elements: { pool: letters.slice(0, 10), require: [], forbid: [] },
      components: { min: 10, max: 10 },
      fractions: { step: 0.1, min: 0.1, max: 10, each: {} },
    }),
  );
  expect(countPoints(grid)).toBe(1n);
});

function choose(from: number, many: number): bigint {
  let ways = 1n;
  for (let index = 1; index <= many; index++) ways = (ways * BigInt(from - many + index)) / BigInt(index);
  return ways;
}
