import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bestInBatches } from '../../src/outcome/bestInBatches.ts';
import { bestPoints } from '../../src/outcome/bestPoints.ts';

const offers = fc.array(
  fc.tuple(
    fc.oneof(fc.integer({ min: -5, max: 5 }), fc.constant(Number.NaN)),
    fc.nat({ max: 3 }),
    fc.nat({ max: 400 }),
  ),
  { maxLength: 300, size: 'max' },
);

test('keeps exactly what a heap keeps, in its order, ties and points without a score included', () => {
  fc.assert(
    fc.property(
      offers,
      fc.integer({ min: 1, max: 60 }),
      fc.constantFrom('high' as const, 'low' as const),
      (all, keep, prefer) => {
        const [batches, heap] = [bestInBatches(keep, prefer), bestPoints(keep, prefer)];
        const known = new Set<string>();
        for (const [score, system, point] of all) {
          if (known.has(`${system} ${point}`)) continue;
          known.add(`${system} ${point}`);
          batches.offer(score, system, point);
          heap.offer(score, system, point);
          expect(batches.worstKey()).toBeGreaterThanOrEqual(heap.worstKey());
          if (batches.excludes(0, 1, 7)) expect(heap.excludes(0, 1, 7)).toBe(true);
        }
        expect(batches.take()).toEqual(heap.take());
        expect(batches.take()).toHaveLength(0);
        expect(batches.worstKey()).toBe(Number.POSITIVE_INFINITY);
      },
    ),
    { numRuns: 200 },
  );
});

test('a hundred thousand points of a million, offered the worst first, are the best in order', () => {
  const best = bestInBatches(100_000, 'low');
  for (let point = 0; point < 1_000_000; point += 1) best.offer(1_000_000 - point, 0, point);
  const kept = best.take();
  expect(kept.length).toBe(300_000);
  expect([...kept.slice(0, 3), ...kept.slice(-3)]).toEqual([1, 0, 999_999, 100_000, 0, 900_000]);
});
