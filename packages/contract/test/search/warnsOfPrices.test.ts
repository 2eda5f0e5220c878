import { expect, test } from 'vitest';
import { type SearchView, warnsOfPrices } from '../../src/index.ts';

const quantities = [
  { id: 'density', unit: 'g/cm3' },
  { id: 'cost', unit: 'currency/kg' },
  { id: 'costPerLitre', unit: 'currency/L' },
];
const byDensity = { limits: [{ quantity: 'density', max: 0.1 }], rank: [{ quantity: 'density' }] };
const warns = (specification: object, rest: object = {}) =>
  warnsOfPrices(
    {
      ...{ specification, moreQuantities: [], kept: 0, finishedAt: '2027-01-14T08:00:00Z' },
      prices: { date: '2027-01-14', currency: 'EUR', invented: true },
      ...rest,
    } as unknown as SearchView,
    quantities,
  );

test('a search that has ended with nothing kept and asks for no price does not warn of prices', () => {
  expect(warns(byDensity)).toBe(false);
});

test('what is kept shows its cost, and a search that goes on may keep something', () => {
  expect(warns(byDensity, { kept: 1 })).toBe(true);
  expect(warns(byDensity, { finishedAt: null })).toBe(true);
});

test.each([
  ['a limit', { ...byDensity, limits: [{ quantity: 'cost', max: 1 }] }],
  ['the ranking', { ...byDensity, rank: [{ quantity: 'costPerLitre' }] }],
  ['the front', { ...byDensity, front: [{ quantity: 'density' }, { quantity: 'cost' }] }],
  ['what is asked of kept ones', { ...byDensity, keptOnly: [{ quantity: 'cost', max: 1 }] }],
  ['an expression, though prices cancel in its unit', { ...byDensity, lets: { ratio: 'cost/costPerLitre' } }],
])('a search that names a price in %s warns, whatever it kept', (_, specification) => {
  expect(warns(specification)).toBe(true);
});

test('prices that somebody brought are not warned of', () => {
  expect(warns(byDensity, { kept: 1, prices: { date: '', currency: 'CHF', invented: false } })).toBe(false);
  expect(warns(byDensity, { kept: 1, prices: null })).toBe(false);
});
