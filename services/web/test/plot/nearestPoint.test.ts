import fc from 'fast-check';
import { expect, test } from 'vitest';
import { nearestPoint, nextPoint, type Places } from '../../src/plot/nearestPoint.ts';

const places = (points: [number, number][]): Places => ({
  x: Float32Array.from(points, ([x]) => x),
  y: Float32Array.from(points, ([, y]) => y),
});
const cross = places([
  [50, 50],
  [80, 52],
  [60, 90],
  [20, 50],
  [50, 10],
  [Number.NaN, Number.NaN],
]);

test('the nearest point is within reach, or there is none', () => {
  expect(nearestPoint(cross, 78, 50, 12)).toBe(1);
  expect(nearestPoint(cross, 110, 50, 12)).toBeNull();
});

test('an arrow leads to what lies straight ahead rather than to what is near but aside', () => {
  expect(nextPoint(cross, 0, 'right')).toBe(1);
  expect(nextPoint(cross, 0, 'left')).toBe(3);
  expect(nextPoint(cross, 0, 'up')).toBe(4);
  expect(nextPoint(cross, 0, 'down')).toBe(2);
  expect(nextPoint(cross, 1, 'right')).toBeNull();
});

const points = fc.array(
  fc.tuple(fc.integer({ min: 0, max: 400 }), fc.integer({ min: 0, max: 300 })) as fc.Arbitrary<
    [number, number]
  >,
  { minLength: 2, maxLength: 30, size: 'max' },
);

test('walking right again and again comes to the rightmost column of points, and ends there', () => {
  fc.assert(
    fc.property(points, (all) => {
      const where = places(all);
      const rightmost = Math.max(...where.x);
      let at = 0;
      for (let steps = 0; steps <= all.length; steps += 1) {
        const next = nextPoint(where, at, 'right');
        if (next === null) break;
        expect(where.x[next]).toBeGreaterThan(where.x[at]!);
        at = next;
      }
      expect(where.x[at]).toBe(rightmost);
    }),
  );
});
