import fc from 'fast-check';
import { expect, test } from 'vitest';
import { compositionDistance } from '../../src/index.ts';
import { alloys } from '../fixtures/alloys.ts';

const few = alloys(['Al', 'Co', 'Cr', 'Fe', 'Ni', 'Ti'], { least: 1 });

test('half the sum of |Δc|, by hand', () => {
  expect(compositionDistance({ Al: 50, Ni: 50 }, { Al: 30, Ni: 50, Cr: 20 })).toBeCloseTo(0.2, 12);
  expect(
    compositionDistance({ Co: 1, Cr: 1, Fe: 1, Ni: 1 }, { Co: 1, Cr: 1, Fe: 1, Mn: 1, Ni: 1 }),
  ).toBeCloseTo(0.2, 12);
});

test('the plain sum gives the same, whatever the totals', () => {
  fc.assert(
    fc.property(few, few, (one, other) => {
      const [total, otherTotal] = [one, other].map((alloy) =>
        Object.values(alloy).reduce((sum, x) => sum + x, 0),
      );
      const all = new Set([...Object.keys(one), ...Object.keys(other)]);
      let sum = 0;
      for (const symbol of all)
        sum += Math.abs((one[symbol] ?? 0) / total! - (other[symbol] ?? 0) / otherTotal!);
      expect(compositionDistance(one, other)).toBeCloseTo(sum / 2, 12);
    }),
  );
});

test('it is a distance: 0 to itself, the same both ways, no longer than a detour, at most 1', () => {
  fc.assert(
    fc.property(few, few, few, (one, other, third) => {
      const direct = compositionDistance(one, other);
      expect(compositionDistance(one, one)).toBeCloseTo(0, 12);
      expect(compositionDistance(other, one)).toBeCloseTo(direct, 12);
      expect(direct).toBeLessThanOrEqual(1);
      expect(direct).toBeLessThanOrEqual(
        compositionDistance(one, third) + compositionDistance(third, other) + 1e-12,
      );
    }),
  );
});

test('alloys without a common element are 1 apart', () => {
  expect(compositionDistance({ Al: 1 }, { Ni: 1, Co: 2 })).toBe(1);
});
