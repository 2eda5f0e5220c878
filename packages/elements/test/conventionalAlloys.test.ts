import { expect, test } from 'vitest';
import { conventionalAlloys } from '../src/index.ts';

const entropyOverR = (composition: Readonly<Record<string, number>>): number =>
  -Object.values(composition).reduce((sum, share) => sum + (share / 100) * Math.log(share / 100), 0);

// ΔS/R as in a table of Yeh (in Murty, Yeh & Ranganathan, High-Entropy Alloys, 2014), typed from
// memory: weak evidence. That table takes some alloys at the rich end of their range.
test.each([
  ['Stainless steel 304', 0.96],
  ['Stainless steel 316', 1.15],
  ['High-speed steel M2', 0.73],
  ['Magnesium alloy AZ91', 0.35],
  ['Aluminium alloy 7075', 0.43],
  ['Cartridge brass 70/30', 0.61],
  ['Titanium alloy Ti-6Al-4V', 0.48],
  ['Nickel superalloy 718', 1.31],
])('the entropy of %s is about %d R', (name, published) => {
  const { composition } = conventionalAlloys.find((alloy) => alloy.name === name)!;
  expect(Math.abs(entropyOverR(composition) - published)).toBeLessThan(0.16);
});

test('every alloy adds up to 100, by weight and by atoms, and its balance is positive', () => {
  for (const { name, composition, weightPercent } of conventionalAlloys) {
    for (const shares of [composition, weightPercent]) {
      expect(
        Object.values(shares).reduce((sum, share) => sum + share, 0),
        name,
      ).toBeCloseTo(100, 10);
      expect(Math.min(...Object.values(shares)), name).toBeGreaterThan(0);
    }
  }
});

// 70 wt.% copper: 70/63.546 against 30/65.38 moles.
test('cartridge brass has 70.59 at.% copper', () => {
  const brass = conventionalAlloys.find(({ name }) => name.startsWith('Cartridge'))!;
  expect(brass.composition.Cu).toBeCloseTo((100 * (70 / 63.546)) / (70 / 63.546 + 30 / 65.38), 10);
});
