import fc from 'fast-check';
import { expect, test } from 'vitest';
import { edgesFor, spreadOver } from '../../src/distributions/spreads.ts';

const value = fc.integer({ min: -1e9, max: 1e9 }).map((thousandths) => thousandths / 1000);
const values = fc.array(value, { minLength: 1, maxLength: 200, size: 'max' });

test('every value is counted once, in a bin, below, above or as missing', () => {
  fc.assert(
    fc.property(values, fc.nat(5), (all, missing) => {
      const { spread, add } = spreadOver(edgesFor([all], []));
      for (const value of all) add(value);
      for (let one = 0; one < missing; one += 1) add(one % 2 === 0 ? null : Number.NaN);
      const inBins = spread.counts.reduce((sum, count) => sum + count, 0);
      expect(inBins + spread.below + spread.above).toBe(all.length);
      expect(spread.missing).toBe(missing);
    }),
  );
});

test('a value on an edge lies in the bin that begins there, one on the last edge in the last bin', () => {
  const { spread, add } = spreadOver([0, 1, 2, 3]);
  for (const value of [-0.1, 0, 1, 3, 3, 3.1]) add(value);
  expect(spread).toEqual({ counts: [1, 1, 2], below: 1, above: 1, missing: 0 });
});

test('a few far values do not press all others into one bin', () => {
  const all = [...Array.from({ length: 5_000 }, (_, place) => place / 5_000), 1e9];
  const { spread, add } = spreadOver(edgesFor([all], []));
  for (const value of all) add(value);
  expect(spread.above).toBeLessThanOrEqual(11);
  expect(spread.counts.filter((count) => count > 0).length).toBeGreaterThan(50);
});

test('the edges of limits lie on the axis, and equal values have bins around them', () => {
  const edges = edgesFor([[1, 2]], [8]);
  expect(edges.at(-1)).toBeGreaterThan(8);
  const alike = edgesFor([[7, 7, 7]], []);
  expect(alike[0]).toBeLessThan(7);
  expect(alike.at(-1)).toBeGreaterThan(7);
});

test('a small set beside a large one lies on the axis, and no values at all have bins too', () => {
  const large = Array.from({ length: 10_000 }, (_, place) => place / 10_000);
  const edges = edgesFor([large, [5, 5.1, 5.2]], []);
  expect(edges.at(-1)).toBeGreaterThan(5.2);
  const none = edgesFor([[], []], []);
  expect(none).toHaveLength(edges.length);
  expect(none.every(Number.isFinite)).toBe(true);
});
