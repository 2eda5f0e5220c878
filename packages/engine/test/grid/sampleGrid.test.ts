import fc from 'fast-check';
import { expect, test } from 'vitest';
import { gridPoints } from '../../src/grid/gridPoints.ts';
import type { PointList } from '../../src/grid/pointList.ts';
import { wholeNumbers } from '../../src/grid/wholeNumbers.ts';
import { countPoints, gridOf, sampleGrid } from '../../src/index.ts';
import { everyPoint } from '../fixtures/everyPoint.ts';
import { smallGrids, specificationWith } from '../fixtures/specifications.ts';

/** Each point as a text: symbols with at.%. */
function texts({ symbols }: { symbols: readonly string[] }, points: PointList): string[] {
  return Array.from({ length: points.count }, (_, at) => {
    const [start, end] = [points.starts[at]!, points.starts[at + 1]!];
    const amounts = [...points.parts.subarray(start, end)].map((parts) => (100 * parts) / points.wholes[at]!);
    const present = [...points.members.subarray(start, end)].map((member) => symbols[member]!);
    return textOf(present, amounts);
  });
}

function textOf(symbols: readonly string[], amounts: readonly number[]): string {
  return symbols.map((symbol, at) => symbol + amounts[at]!.toFixed(6)).join(' ');
}

test('the numbers of a grid are its points, each once', () => {
  fc.assert(
    fc.property(smallGrids, (specification) => {
      const grid = gridOf(specification);
      const expected = everyPoint(specification).map(({ symbols, amounts }) => textOf(symbols, amounts));
      const { points, whole } = sampleGrid(grid, expected.length, 1);
      expect(whole).toBe(true);
      expect(texts(grid, points).sort()).toEqual(expected.sort());
      expect(() => gridPoints(grid).at(expected.length)).toThrow(RangeError);
    }),
    { numRuns: 300 },
  );
});

// Pearson's chi-square statistic of 84,000 draws in 84 cells has mean 83 and variance 166: five
// standard deviations above the mean is met once in a million seeds.
test('every point of a grid is drawn equally often, whatever the size of its system', () => {
  const fractions = { step: 10, min: 10, max: 100, each: { Al: { max: 20 } } };
  const specification = specificationWith({
    elements: { pool: ['Al', 'Co', 'Cr', 'Fe'], require: [], forbid: [] },
    components: { min: 1, max: 4 },
    fractions,
  });
  const grid = gridOf(specification);
  const cells = new Map(
    everyPoint(specification).map(({ symbols, amounts }) => [textOf(symbols, amounts), 0]),
  );
  for (let seed = 0; seed < 1000; seed += 1) {
    const draws = cells.size - 1;
    for (const text of texts(grid, sampleGrid(grid, draws, seed).points))
      cells.set(text, cells.get(text)! + 1);
  }
  const counts = [...cells.values()];
  const mean = counts.reduce((sum, count) => sum + count, 0) / counts.length;
  const statistic = counts.reduce((sum, count) => sum + (count - mean) ** 2 / mean, 0);
  const freedom = counts.length - 1;
  expect(statistic).toBeLessThan(freedom + 5 * Math.sqrt(2 * freedom));
  expect(statistic).toBeGreaterThan(freedom - 5 * Math.sqrt(2 * freedom));
});

test('a seed draws the same points again, and another one others', () => {
  const grid = gridOf(specificationWith({ fractions: { step: 0.5, min: 0.5, max: 100, each: {} } }));
  const drawn = (seed: number) => sampleGrid(grid, 500, seed).points;
  expect(drawn(7)).toStrictEqual(drawn(7));
  expect(drawn(8)).not.toEqual(drawn(7));
  expect(drawn(7 + 2 ** 32)).not.toEqual(drawn(7));
});

test('of a grid of 10^13 points the mean amounts are those of symmetry', () => {
  const pool = ['Al', 'Co', 'Cr', 'Cu', 'Fe', 'Mn', 'Mo', 'Ni', 'Ti', 'V', 'W', 'Zr'];
  const specification = specificationWith({
    elements: { pool, require: [], forbid: [] },
    components: { min: 6, max: 6 },
    fractions: { step: 0.2, min: 0.2, max: 100, each: {} },
  });
  const grid = gridOf(specification);
  expect(countPoints(grid)).toBeGreaterThan(10n ** 13n);
  const { points, whole } = sampleGrid(grid, 20_000, 3);
  expect(whole).toBe(false);
  const sums = pool.map(() => 0);
  for (const [place, member] of points.members.entries()) sums[member]! += points.parts[place]!;
  // Each element takes a twelfth; the share of one in a point has a standard deviation below 0.15.
  const error = (5 * 0.15) / Math.sqrt(points.count);
  for (const sum of sums) expect(Math.abs(sum / 500 / points.count - 1 / 12)).toBeLessThan(error);
});

test('whole numbers stay below their bound and reach all of it', () => {
  const draw = wholeNumbers(42);
  const drawn = Array.from({ length: 1000 }, () => draw(2 ** 53));
  expect(Math.max(...drawn)).toBeGreaterThan(0.99 * 2 ** 53);
  expect(drawn.some((number) => number % 2 === 1)).toBe(true);
  expect(drawn.every(Number.isSafeInteger)).toBe(true);
  expect(new Set(Array.from({ length: 200 }, () => draw(3)))).toEqual(new Set([0, 1, 2]));
});
