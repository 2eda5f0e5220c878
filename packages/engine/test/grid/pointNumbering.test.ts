import fc from 'fast-check';
import { expect, test } from 'vitest';
import { pointNumbering } from '../../src/grid/pointNumbering.ts';
import { systemNumbering } from '../../src/grid/systemNumbering.ts';
import { candidateAt, gridOf } from '../../src/index.ts';
import { everyPoint } from '../fixtures/everyPoint.ts';
import { smallGrids, specificationWith } from '../fixtures/specifications.ts';

test('systems and their points come in the order of plain enumeration', () => {
  fc.assert(
    fc.property(smallGrids, (specification) => {
      const grid = gridOf(specification);
      const { count, systemAt } = systemNumbering(grid);
      const found = Array.from({ length: count }, (_, system) =>
        Array.from({ length: pointNumbering(grid, systemAt(system)).count }, (_, point) => {
          const { symbols, parts, total } = candidateAt(grid, system, point);
          return { symbols, amounts: parts.map((amount) => Math.round((1e9 * amount) / total)) };
        }),
      ).flat();
      const expected = everyPoint(specification).map(({ symbols, amounts }) => ({
        symbols,
        amounts: amounts.map((amount) => Math.round(1e7 * amount)),
      }));
      expect(found).toEqual(expected);
    }),
  );
});

test('number and amounts lead to each other', () => {
  fc.assert(
    fc.property(smallGrids, (specification) => {
      const grid = gridOf(specification);
      const { count, systemAt } = systemNumbering(grid);
      for (let number = 0; number < count; number++) {
        const points = pointNumbering(grid, systemAt(number));
        for (let point = 0; point < points.count; point++) {
          expect(points.numberOf(points.partsAt(point))).toBe(point);
        }
      }
    }),
    { numRuns: 50 },
  );
});

test('large systems are numbered without loss', () => {
  const fractions = { step: 0.1, min: 0.1, max: 100, each: { Co: { max: 30 } } };
  const grid = gridOf(specificationWith({ fractions }));
  const points = pointNumbering(grid, [0, 1, 2, 3, 4]);
  expect(points.count).toBeGreaterThan(1e9);
  fc.assert(
    fc.property(fc.integer({ min: 0, max: points.count - 1 }), (point) => {
      expect(points.numberOf(points.partsAt(point))).toBe(point);
    }),
  );
});

test('a number that no point has is refused', () => {
  const points = pointNumbering(gridOf(specificationWith()), [0, 1, 2]);
  expect(points.count).toBe(6);
  expect(() => points.partsAt(6)).toThrow(RangeError);
});
