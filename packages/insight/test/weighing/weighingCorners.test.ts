import { parseAlloy, weightToAtomicPercent } from '@tiegel/elements';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { mostWeighed, weighingCorners } from '../../src/weighing/weighingCorners.ts';
import { alloys } from '../fixtures/alloys.ts';

// 50 g of equimolar NiAl: 50 · 58.6934/85.6749385 g of nickel.
test('the masses are those of the alloy and add up to the batch', () => {
  const { masses } = weighingCorners(parseAlloy('AlNi'), 50, 0.01);
  expect(masses.Ni).toBeCloseTo((50 * 58.6934) / (58.6934 + 26.9815385), 10);
  expect(masses.Al! + masses.Ni!).toBeCloseTo(50, 12);
});

test('every corner is one step off in every mass', () => {
  const { masses, corners } = weighingCorners(parseAlloy('AlNi'), 50, 0.01);
  const [aluminium, nickel] = [masses.Al!, masses.Ni!];
  expect(corners).toHaveLength(4);
  for (const [da, dn] of [
    [-0.01, -0.01],
    [0.01, -0.01],
    [-0.01, 0.01],
    [0.01, 0.01],
  ] as const) {
    expect(corners).toContainEqual(weightToAtomicPercent({ Al: aluminium + da, Ni: nickel + dn }));
  }
});

test('a mass below one step can come out as nothing, and the alloy as another', () => {
  const { corners } = weighingCorners({ Al: 99.99, B: 0.01 }, 10, 0.01);
  expect(corners.filter((corner) => !('B' in corner))).toHaveLength(2);
});

test('masses read back give the alloy, and every corner adds up to 100 at.%', () => {
  fc.assert(
    fc.property(alloys(), fc.double({ min: 1, max: 1000, noNaN: true }), (alloy, mass) => {
      const { masses, corners } = weighingCorners(alloy, mass, mass / 1000);
      const back = weightToAtomicPercent(masses);
      const total = Object.values(alloy).reduce((sum, amount) => sum + amount, 0);
      for (const [symbol, amount] of Object.entries(alloy))
        expect(back[symbol]).toBeCloseTo((100 * amount) / total, 9);
      for (const corner of corners) {
        expect(Object.values(corner).reduce((sum, share) => sum + share, 0)).toBeCloseTo(100, 9);
      }
    }),
  );
});

test('what cannot be weighed is refused', () => {
  const alloy = parseAlloy('AlNi');
  for (const [mass, resolution] of [
    [0, 0.01],
    [50, 0],
    [50, -1],
    [0.01, 0.01],
    [Number.NaN, 0.01],
    [50, Number.NaN],
  ] as const) {
    expect(() => weighingCorners(alloy, mass, resolution)).toThrow(RangeError);
  }
  const many = parseAlloy('AlCoCrCuFeMnMoNbNiTiVWZr');
  expect(Object.keys(many)).toHaveLength(mostWeighed + 1);
  expect(() => weighingCorners(many, 50, 0.01)).toThrow(RangeError);
});
