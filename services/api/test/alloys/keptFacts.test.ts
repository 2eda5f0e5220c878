import { demoPrices, factsFor } from '@tiegel/elements';
import { expect, test } from 'vitest';
import { keptFacts } from '../../src/alloys/keptFacts.ts';

const dearer = {
  ...demoPrices,
  prices: { ...demoPrices.prices, Ni: { ...demoPrices.prices.Ni!, pricePerKilogram: 1000 } },
};

test('the same data are the same facts, whatever the order of the elements', () => {
  const facts = keptFacts(['Ni', 'Co'], demoPrices);
  expect(keptFacts(['Co', 'Ni'], demoPrices)).toBe(facts);
  expect(facts).toEqual(factsFor(['Co', 'Ni'], { prices: demoPrices }));
});

test('another price list is other facts', () => {
  expect(keptFacts(['Co', 'Ni'], dearer)).toEqual(factsFor(['Co', 'Ni'], { prices: dearer }));
  expect(keptFacts(['Co', 'Ni'], null)).toEqual(factsFor(['Co', 'Ni']));
  expect(keptFacts(['Co', 'Ni'], demoPrices)).toEqual(factsFor(['Co', 'Ni'], { prices: demoPrices }));
});

test('what is asked for again is kept while others go', () => {
  const facts = keptFacts(['Co', 'Ni'], null);
  for (const symbol of 'Al Cr Cu Fe Hf Mg Mn Mo Nb Si Sn Ta Ti V W Zn Zr B C Y La Ce Pr Nd Sm Gd Tb'.split(
    ' ',
  )) {
    keptFacts([symbol], null);
    expect(keptFacts(['Co', 'Ni'], null)).toBe(facts);
  }
});
