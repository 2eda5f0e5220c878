import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bestPoints } from '../../src/outcome/bestPoints.ts';

const point = fc.record({
  score: fc.oneof(
    fc.integer({ min: 0, max: 4 }),
    fc.constant(Number.NaN),
    fc.double({ noDefaultInfinity: true }),
  ),
  system: fc.nat({ max: 4 }),
});
/** Points with numbers of their own, in any order. */
const points = fc
  .array(point, { maxLength: 200, size: 'max' })
  .map((list) => list.map((one, number) => ({ ...one, point: number })))
  .chain((list) => fc.shuffledSubarray(list, { minLength: list.length }));

test.each(['high', 'low'] as const)(
  'the best are those of a sort, %s scores first, ties by system and point',
  (prefer) => {
    fc.assert(
      fc.property(points, fc.nat({ max: 60 }), (list, keep) => {
        const best = bestPoints(keep, prefer);
        for (const { score, system, point: number } of list) best.offer(score, system, number);
        const sorted = list.toSorted((one, other) => {
          const missing = Number(Number.isNaN(one.score)) - Number(Number.isNaN(other.score));
          const better = prefer === 'high' ? other.score - one.score : one.score - other.score;
          return missing || better || one.system - other.system || one.point - other.point;
        });
        const expected = sorted
          .slice(0, keep)
          .flatMap(({ score, system, point: number }) => [score, system, number]);
        expect(Array.from(best.take())).toEqual(expected);
      }),
      { numRuns: 300 },
    );
  },
);

test('no point above the worst key would have been kept', () => {
  fc.assert(
    fc.property(points, fc.integer({ min: 1, max: 20 }), (list, keep) => {
      const best = bestPoints(keep, 'low');
      for (const { score, system, point: number } of list) best.offer(score, system, number);
      const worst = best.worstKey();
      const kept = best.take();
      if (kept.length < 3 * keep) expect(worst).toBe(Number.POSITIVE_INFINITY);
      else expect(worst).toBe(Number.isNaN(kept.at(-3)) ? Number.POSITIVE_INFINITY : kept.at(-3));
    }),
  );
});

test('taking the points empties the place for others', () => {
  const best = bestPoints(2, 'high');
  best.offer(1, 0, 0);
  expect(Array.from(best.take())).toEqual([1, 0, 0]);
  expect(best.take()).toHaveLength(0);
});
