import type { SearchView } from '@tiegel/contract';
import { expect, test } from 'vitest';
import { differences } from '../../src/watch/differences.ts';

const view = (specification: object, rest: object = {}) =>
  ({ specification, dataVersion: 'a', engineVersion: '2', prices: null, ...rest }) as unknown as SearchView;
const named: Record<string, [string, string]> = {
  density: ['Density', 'g/cm³'],
  omega: ['Entropy–enthalpy ratio', ''],
  cost: ['Cost', 'EUR/kg'],
};
const nameOf = (id: string) => ({ name: named[id]?.[0] ?? id, unit: named[id]?.[1] ?? '' });
const asked = {
  name: 'One',
  elements: { pool: ['Al', 'Ni'], require: [] },
  limits: [
    { quantity: 'density', max: 8 },
    { quantity: 'omega', min: 1.1 },
  ],
};

test('what two searches ask and were computed from differently is named, limits by their quantity', () => {
  const other = {
    ...asked,
    name: 'Two',
    elements: { pool: ['Ni', 'Al', 'Ti'], require: [] },
    limits: [
      { quantity: 'omega', min: 2 },
      { quantity: 'cost', max: 30 },
    ],
  };
  const prices = { date: '2027-01-14', currency: 'EUR', invented: true };
  expect(differences(view(asked), view(other, { dataVersion: 'b', prices }), nameOf)).toEqual([
    { what: 'Elements that may be in it', before: 'Al Ni', after: 'Al Ni Ti' },
    { what: 'Limit on density', before: 'density ≤ 8 g/cm³', after: null },
    {
      what: 'Limit on entropy–enthalpy ratio',
      before: 'entropy–enthalpy ratio ≥ 1.1',
      after: 'entropy–enthalpy ratio ≥ 2',
    },
    { what: 'Limit on cost', before: null, after: 'cost ≤ 30 EUR/kg' },
    { what: 'Data version', before: 'a', after: 'b' },
    { what: 'Prices', before: 'none', after: '2027-01-14, EUR, invented' },
  ]);
});

test('the same asked again has no difference, whatever it is called and in whatever order', () => {
  const again = {
    ...asked,
    name: 'Again',
    limits: asked.limits.toReversed(),
    elements: { pool: ['Ni', 'Al'], require: [] },
  };
  expect(differences(view(asked), view(again), nameOf)).toEqual([]);
});

test('every part of a specification is named as the form calls it, none as JSON', () => {
  const grid = { step: 5, min: 5, max: 35, each: { Cr: { min: 15 } } };
  const one = {
    fractions: grid,
    rank: [{ quantity: 'density', prefer: 'low' }],
    components: { min: 5, max: 6 },
  };
  const other = {
    fractions: { ...grid, each: { Cr: { min: 10 } } },
    rank: [{ quantity: 'density', prefer: { target: 7 }, within: 1, weight: 2 }],
    components: { min: 5, max: 7 },
    conditions: { annealTemperature: 1473 },
    lets: { merit: 'cost / density' },
  };
  expect(differences(view(one), view(other), nameOf)).toEqual([
    { what: 'Cr, at least, at.%', before: '15', after: '10' },
    { what: 'Number of elements, to', before: '6', after: '7' },
    { what: 'Ranking by density', before: 'as low as possible', after: 'near 7, within 1, weight 2' },
    { what: 'Anneal temperature, K', before: null, after: '1473' },
    { what: 'Expression merit', before: null, after: 'cost / density' },
  ]);
});
