import fc from 'fast-check';
import { expect, test } from 'vitest';
import { logarithmicExtent, logarithmicScale, logarithmicTicks } from '../../src/plot/logarithmicScale.ts';

test('equal factors are equal lengths, and the way leads back', () => {
  const scale = logarithmicScale(1, 1000, 0, 300);
  expect(scale.at(10)).toBeCloseTo(100, 9);
  expect(scale.at(100)).toBeCloseTo(200, 9);
  expect(scale.valueAt(scale.at(37))).toBeCloseTo(37, 9);
  expect(scale.at(0)).toBe(Number.NEGATIVE_INFINITY);
});

test('marks are 1, 2 and 5 over few powers of ten, powers alone over many', () => {
  expect(logarithmicTicks(1, 100, 7)).toEqual([1, 2, 5, 10, 20, 50, 100]);
  expect(logarithmicTicks(1, 1000, 7)).toEqual([1, 10, 100, 1000]);
  expect(logarithmicTicks(0.02, 0.5, 7)).toEqual([0.02, 0.05, 0.1, 0.2, 0.5]);
});

test('an extent holds its values between round ends', () => {
  const values = fc.double({ min: 1e-6, max: 1e9, noNaN: true });
  fc.assert(
    fc.property(values, values, (one, other) => {
      const [from, to] = logarithmicExtent(Math.min(one, other), Math.max(one, other));
      expect(from).toBeLessThanOrEqual(Math.min(one, other) * (1 + 1e-9));
      expect(to).toBeGreaterThanOrEqual(Math.max(one, other) * (1 - 1e-9));
      expect(from).toBeLessThan(to);
    }),
  );
});
