import fc from 'fast-check';
import { expect, test } from 'vitest';
import { pointNumbering } from '../../../src/grid/pointNumbering.ts';
import { prepare } from '../../../src/index.ts';
import {
  type Box,
  firstPointOf,
  halvesOf,
  pointsIn,
  roomIn,
  tightBox,
  widestOf,
} from '../../../src/pruning/boxes/box.ts';
import { rangeBoxes } from '../../../src/pruning/boxes/rangeBoxes.ts';
import { planOf } from '../../fixtures/plans.ts';
import { smallGrids } from '../../fixtures/specifications.ts';

/** Every point within bounds, in lexicographic order. */
function pointsWithin(low: readonly number[], high: readonly number[], total: number): number[][] {
  if (low.length === 0) return total === 0 ? [[]] : [];
  const points: number[][] = [];
  for (let first = low[0]!; first <= Math.min(high[0]!, total); first += 1) {
    for (const rest of pointsWithin(low.slice(1), high.slice(1), total - first))
      points.push([first, ...rest]);
  }
  return points;
}
const pointsOf = ({ low, high, total }: Box) => pointsWithin(low, high, total);

const bounds = fc
  .record({
    sides: fc.array(fc.tuple(fc.integer({ min: 1, max: 6 }), fc.integer({ min: 0, max: 6 })), {
      minLength: 1,
      maxLength: 5,
    }),
    total: fc.integer({ min: 1, max: 25 }),
  })
  .map(({ sides, total }) => ({
    low: sides.map(([low]) => low),
    high: sides.map(([low, width]) => low + width),
    total,
  }));

test('a tight box has the points that lie within the bounds, and each of its bounds is reached', () => {
  fc.assert(
    fc.property(bounds, ({ low, high, total }) => {
      const points = pointsWithin(low, high, total);
      const box = tightBox(low, high, total);
      if (box === null) {
        expect(points).toEqual([]);
        return;
      }
      expect(pointsOf(box)).toEqual(points);
      expect(pointsIn(box)).toBe(points.length);
      expect(firstPointOf(box)).toEqual(points[0]);
      for (const at of low.keys()) {
        const amounts = points.map((point) => point[at]!);
        expect([Math.min(...amounts), Math.max(...amounts)]).toEqual([box.low[at], box.high[at]]);
      }
    }),
    { numRuns: 500 },
  );
});

test('halves share out the points of a box', () => {
  fc.assert(
    fc.property(bounds, ({ low, high, total }) => {
      const box = tightBox(low, high, total);
      if (box === null || pointsIn(box) < 2) return;
      const [lower, upper] = halvesOf(box, widestOf(box));
      expect(Math.max(roomIn(lower), roomIn(upper))).toBeLessThan(roomIn(box));
      const shared = [...pointsOf(lower), ...pointsOf(upper)].map(String).sort();
      expect(shared).toEqual(pointsOf(box).map(String).sort());
    }),
    { numRuns: 300 },
  );
});

// Ten elements of 0.1 at.% steps: terms of inclusion and exclusion beyond 2^53, their sum far below.
test('points of a narrow box are exact where a closed form would round', () => {
  const low = new Array<number>(10).fill(99);
  const high = new Array<number>(10).fill(101);
  const box = tightBox(low, high, 1000)!;
  // Three values each, their sum in the middle: the central trinomial coefficient of 10, OEIS A002426.
  expect(pointsIn(box)).toBe(8953);
});

test('a range of a system’s points is a few boxes that have each of them once', () => {
  fc.assert(
    fc.property(smallGrids, fc.nat(), fc.nat(), fc.nat(), (specification, pick, one, other) => {
      const { grid, systems } = prepare(planOf(specification));
      if (systems.count === 0) return;
      const system = systems.systemAt(pick % systems.count);
      const numbering = pointNumbering(grid, system);
      if (numbering.count === 0) {
        expect(rangeBoxes(grid, system, 0, null)).toEqual([]);
        return;
      }
      const [a, b] = [one % numbering.count, other % numbering.count];
      const [first, end] = [Math.min(a, b), Math.max(a, b) + 1];
      const boxes = rangeBoxes(grid, system, first, end);
      const numbers = boxes.flatMap(pointsOf).map((parts) => numbering.numberOf(parts));
      expect(numbers.sort((left, right) => left - right)).toEqual(
        Array.from({ length: end - first }, (_, more) => first + more),
      );
      expect(boxes.length).toBeLessThanOrEqual(2 * system.length + 1);
    }),
    { numRuns: 300 },
  );
});
