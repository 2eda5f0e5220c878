import fc from 'fast-check';
import { expect, test } from 'vitest';
import { countPasses, meetsOthers, type TriedLimit, tightest } from '../../src/ask/sample/countPasses.ts';
import type { Sample } from '../../src/ask/sample/sample.ts';

function sampleOfValues(values: Record<string, (number | null)[]>): Sample {
  const size = Object.values(values)[0]!.length;
  return { size, points: 1000, whole: false, values: new Map(Object.entries(values)) };
}

test('a value on a limit meets it, one without a value does not, and an empty limit cuts nothing off', () => {
  const sample = sampleOfValues({ density: [7, 8, 8.1, null], cost: [1, null, 3, 4] });
  const limits: TriedLimit[] = [
    { quantity: 'density', min: null, max: 8 },
    { quantity: 'cost', min: null, max: null },
  ];
  const { all, each } = countPasses(sample, limits);
  expect(all).toBe(2);
  expect(each).toEqual([
    { alone: 2, others: 4 },
    { alone: 4, others: 2 },
  ]);
});

test('a limit on what the sample does not hold is left out of the counts', () => {
  const { all, each } = countPasses(sampleOfValues({ density: [1, 2] }), [
    { quantity: 'density', min: 2, max: null },
    { quantity: 'unknown', min: 0, max: 1 },
  ]);
  expect(all).toBe(1);
  expect(each[1]).toEqual({ alone: 2, others: 1 });
});

const value = fc.oneof(fc.constant(null), fc.integer({ min: 0, max: 9 }));
const bound = fc.oneof(fc.constant(null), fc.integer({ min: 0, max: 9 }));

test('counts are those of plainly filtering, whatever the limits', () => {
  const drawn = fc.record({
    points: fc.array(fc.tuple(value, value, value), { minLength: 1, maxLength: 40, size: 'max' }),
    bounds: fc.tuple(fc.tuple(bound, bound), fc.tuple(bound, bound), fc.tuple(bound, bound)),
  });
  fc.assert(
    fc.property(drawn, ({ points, bounds }) => {
      const names = ['a', 'b', 'c'];
      const sample = sampleOfValues(
        Object.fromEntries(names.map((name, place) => [name, points.map((point) => point[place]!)])),
      );
      const limits = names.map((quantity, place) => ({
        quantity,
        min: bounds[place]![0],
        max: bounds[place]![1],
      }));
      const meets = (point: (number | null)[], place: number) => {
        const { min, max } = limits[place]!;
        if (min === null && max === null) return true;
        const one = point[place]!;
        return one !== null && one >= (min ?? -1) && one <= (max ?? 10);
      };
      const passes = countPasses(sample, limits);
      expect(passes.all).toBe(points.filter((point) => [0, 1, 2].every((k) => meets(point, k))).length);
      for (const k of [0, 1, 2]) {
        const others = points.map((point) => [0, 1, 2].every((other) => other === k || meets(point, other)));
        expect(passes.each[k]).toEqual({
          alone: points.filter((point) => meets(point, k)).length,
          others: others.filter(Boolean).length,
        });
        expect(points.map((_, point) => meetsOthers(passes, point, k))).toEqual(others);
      }
    }),
  );
});

test('the tightest limit is the one without which most more would pass, if any stands out', () => {
  const limits = [
    { quantity: 'a', min: 5, max: null },
    { quantity: 'b', min: 1, max: null },
  ];
  const sample = sampleOfValues({ a: [0, 0, 0, 0, 9], b: [1, 1, 1, 1, 1] });
  expect(tightest(countPasses(sample, limits))).toBe(0);
  const loose = sampleOfValues({ a: [9, 9, 9, 9, 0], b: [1, 1, 1, 1, 1] });
  expect(tightest(countPasses(loose, limits))).toBe(-1);
});
