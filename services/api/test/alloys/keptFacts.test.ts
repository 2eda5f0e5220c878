import { demoPrices, factsFor, type PairValue, type PriceList } from '@tiegel/elements';
import { expect, test } from 'vitest';
import { keptFacts } from '../../src/alloys/keptFacts.ts';

const dearer = {
  ...demoPrices,
  prices: { ...demoPrices.prices, Ni: { ...demoPrices.prices.Ni!, pricePerKilogram: 1000 } },
};

const inForce = (prices: PriceList | null, pairs: readonly PairValue[] = []) => ({
  prices: () => prices,
  pairs: () => pairs,
});

test('the same data are the same facts, whatever the order of the elements', () => {
  const facts = keptFacts(['Ni', 'Co'], inForce(demoPrices));
  expect(keptFacts(['Co', 'Ni'], inForce(demoPrices))).toBe(facts);
  expect(facts).toEqual(factsFor(['Co', 'Ni'], { prices: demoPrices }));
});

test('another price list is other facts', () => {
  expect(keptFacts(['Co', 'Ni'], inForce(dearer))).toEqual(factsFor(['Co', 'Ni'], { prices: dearer }));
  expect(keptFacts(['Co', 'Ni'], inForce(null))).toEqual(factsFor(['Co', 'Ni']));
  expect(keptFacts(['Co', 'Ni'], inForce(demoPrices))).toEqual(
    factsFor(['Co', 'Ni'], { prices: demoPrices }),
  );
});

test('what is asked for again is kept while others go', () => {
  const facts = keptFacts(['Co', 'Ni'], inForce(null));
  for (const symbol of 'Al Cr Cu Fe Hf Mg Mn Mo Nb Si Sn Ta Ti V W Zn Zr B C Y La Ce Pr Nd Sm Gd Tb'.split(
    ' ',
  )) {
    keptFacts([symbol], inForce(null));
    expect(keptFacts(['Co', 'Ni'], inForce(null))).toBe(facts);
  }
});

test('a pair value of one’s own is other facts, where both elements are there', () => {
  const pairs = [{ a: 'Al', b: 'Ni', mixingEnthalpy: -30, source: '' }];
  expect(keptFacts(['Al', 'Ni'], inForce(null, pairs)).pairs.mixingEnthalpy![0]![1]).toBe(-30);
  expect(keptFacts(['Co', 'Ni'], inForce(null, pairs))).toBe(keptFacts(['Co', 'Ni'], inForce(null)));
});
