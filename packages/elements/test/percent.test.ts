import fc from 'fast-check';
import { expect, test } from 'vitest';
import { atomicToWeightPercent, weightToAtomicPercent } from '../src/index.ts';
import { anyComposition } from './compositions.ts';

test('at.% to wt.% and back returns, relative error below 1e-12', () => {
  fc.assert(
    fc.property(anyComposition, (composition) => {
      const back = weightToAtomicPercent(atomicToWeightPercent(composition));
      expect(Object.keys(back)).toEqual(Object.keys(composition));
      for (const [symbol, share] of Object.entries(composition)) {
        expect(Math.abs(back[symbol]! / share - 1)).toBeLessThan(1e-12);
      }
    }),
    { numRuns: 1000 },
  );
});

// Closed form for two equal shares: wt.% = 100 A₁/(A₁ + A₂), masses 55.845 (Fe) and 58.6934 (Ni) u.
test('two equal shares follow the closed form', () => {
  const { Fe, Ni } = atomicToWeightPercent({ Fe: 50, Ni: 50 });
  expect(Fe).toBeCloseTo((100 * 55.845) / (55.845 + 58.6934), 12);
  expect(Fe! + Ni!).toBeCloseTo(100, 12);
});

// Carbon steel arithmetic known to every student of the trade: 0.77 wt.% C, the eutectoid, is 3.5 at.%
// (3.47, from memory of textbooks; 1 printed decimal).
test('0.77 wt.% carbon in iron is 3.5 at.%', () => {
  expect(weightToAtomicPercent({ C: 0.77, Fe: 99.23 }).C).toBeCloseTo(3.5, 1);
});

test('a symbol without data is a mistake of the caller', () => {
  expect(() => atomicToWeightPercent({ Xx: 100 })).toThrow(RangeError);
});
