import fc from 'fast-check';
import { expect, test } from 'vitest';
import { pointNumbering } from '../../src/grid/pointNumbering.ts';
import { systemNumbering } from '../../src/grid/systemNumbering.ts';
import { countPoints, gridOf, planChunks } from '../../src/index.ts';
import { smallGrids, specificationWith } from '../fixtures/specifications.ts';

const options = fc.record({
  pointsPerChunk: fc.integer({ min: 1, max: 400 }),
  workers: fc.integer({ min: 1, max: 9 }),
});

test('every grid point lies in exactly one chunk, in order, and each chunk knows how many it has', () => {
  fc.assert(
    fc.property(smallGrids, options, (specification, how) => {
      const grid = gridOf(specification);
      const systems = systemNumbering(grid);
      const chunks = planChunks(grid, how);
      expect(chunks.map(({ ordinal }) => ordinal)).toEqual(chunks.map((_, index) => index));
      const covered = chunks.flatMap(({ firstSystem, endSystem, firstPoint, endPoint, points }) => {
        const inside = pointsOf(grid, firstSystem, endSystem).slice(firstPoint, endPoint ?? undefined);
        if (inside.length !== points) expect(inside).toHaveLength(points);
        if (endPoint !== null && endSystem !== firstSystem + 1) expect(endSystem).toBe(firstSystem + 1);
        return inside;
      });
      expect(covered.join()).toBe(pointsOf(grid, 0, systems.count).join());
    }),
  );
});

// Bounds that hold lines at both ends, and chunks that are to be shorter than a line.
test.each([
  { pointsPerChunk: 100, step: 5, most: 60 },
  { pointsPerChunk: 40, step: 2, most: 30 },
  { pointsPerChunk: 3, step: 2, most: 30 },
])('a system is cut only where a line begins: $pointsPerChunk points, up to $most at.%', (asked) => {
  const { pointsPerChunk, step, most } = asked;
  const grid = gridOf(
    specificationWith({
      components: { min: 4, max: 4 },
      fractions: { step, min: step, max: most, each: {} },
    }),
  );
  const cut = planChunks(grid, { pointsPerChunk, workers: 1 }).filter(({ firstPoint }) => firstPoint > 0);
  expect(cut.length).toBeGreaterThan(10);
  for (const { firstSystem, firstPoint } of cut) {
    const numbering = pointNumbering(grid, systemNumbering(grid).systemAt(firstSystem));
    const begins = numbering.partsAt(firstPoint).slice(0, 2);
    const before = numbering.partsAt(firstPoint - 1).slice(0, 2);
    expect(begins).not.toEqual(before);
  }
});

test('a system of up to half as many points again as a chunk should hold stays whole', () => {
  // 171 points: three positive multiples of 5 at.% that add up to 100.
  const grid = gridOf(
    specificationWith({
      elements: { pool: ['Co', 'Cr', 'Ni'], require: [], forbid: [] },
      components: { min: 3, max: 3 },
      fractions: { step: 5, min: 5, max: 100, each: {} },
    }),
  );
  const sizes = (pointsPerChunk: number) =>
    planChunks(grid, { pointsPerChunk, workers: 1 }).map(({ points }) => points);
  expect(sizes(114)).toEqual([171]);
  expect(sizes(113).length).toBeGreaterThan(1);
});

test('chunks hold about what was asked for, and less towards the end', () => {
  const grid = gridOf(
    specificationWith({ components: { min: 5, max: 5 }, fractions: { step: 1, min: 1, max: 100, each: {} } }),
  );
  const sizes = planChunks(grid, { pointsPerChunk: 100_000, workers: 4 }).map(({ points }) => points);
  expect(Math.max(...sizes)).toBeLessThanOrEqual(150_000);
  expect(sizes.slice(0, 5).every((size) => size > 95_000)).toBe(true);
  expect(sizes.slice(-4).every((size) => size < 25_000)).toBe(true);
});

test('one worker waits for nobody; of two the last chunks are tiny, of very many a quarter', () => {
  const grid = gridOf(
    specificationWith({ components: { min: 5, max: 5 }, fractions: { step: 1, min: 1, max: 100, each: {} } }),
  );
  const smallest = (workers: number) => {
    const chunks = planChunks(grid, { pointsPerChunk: 100_000, workers });
    return Math.min(...chunks.slice(0, -1).map(({ points }) => points));
  };
  expect(smallest(1)).toBeGreaterThan(90_000);
  expect(smallest(2)).toBeLessThan(2000);
  expect(smallest(512)).toBeGreaterThan(24_000);
});

test('systems stay whole where the grid says so', () => {
  const grid = {
    ...gridOf(specificationWith({ fractions: { step: 2, min: 2, max: 100, each: {} } })),
    wholeSystems: true,
  };
  const chunks = planChunks(grid, { pointsPerChunk: 100, workers: 1 });
  expect(chunks.length).toBeGreaterThan(10);
  expect(chunks.every(({ firstPoint, endPoint }) => firstPoint === 0 && endPoint === null)).toBe(true);
});

test('a plan has a bounded number of chunks however small they were to be', () => {
  const grid = gridOf(
    specificationWith({
      components: { min: 5, max: 5 },
      fractions: { step: 0.5, min: 0.5, max: 100, each: {} },
    }),
  );
  const chunks = planChunks(grid, { pointsPerChunk: 1, workers: 2 });
  expect(chunks.length).toBeLessThan(250_000);
  expect(chunks.reduce((sum, { points }) => sum + BigInt(points), 0n)).toBe(countPoints(grid));
});

test('a grid without points has no chunks, and one of 2^53 points or more no plan', () => {
  const nothing = specificationWith({ fractions: { step: 50, min: 50, max: 100, each: {} } });
  expect(planChunks(gridOf(nothing), { pointsPerChunk: 10, workers: 1 })).toEqual([]);
  const elements = { pool: Array.from({ length: 30 }, (_, index) => `X${index}`), require: [], forbid: [] };
  const endless = specificationWith({
    elements,
    components: { min: 10, max: 10 },
    fractions: { step: 0.1, min: 0.1, max: 100, each: {} },
  });
  expect(() => planChunks(gridOf(endless), { pointsPerChunk: 1e7, workers: 1 })).toThrow(RangeError);
});

/** 'system.point' of every point of some systems, in order. */
function pointsOf(grid: ReturnType<typeof gridOf>, first: number, end: number): string[] {
  const { systemAt } = systemNumbering(grid);
  return Array.from({ length: end - first }, (_, index) => {
    const { count } = pointNumbering(grid, systemAt(first + index));
    return Array.from({ length: count }, (_, point) => `${first + index}.${point}`);
  }).flat();
}
