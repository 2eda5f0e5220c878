import { expect, test } from 'vitest';
import { differencesOf, type SearchView } from '../../src/index.ts';

const view = (specification: object, rest: object = {}) =>
  ({
    ...{ specification, moreQuantities: [], dataVersion: 'a', engineVersion: '2', prices: null },
    ...rest,
  }) as unknown as SearchView;
const words = {
  quantities: [
    { id: 'density', name: 'Density', unit: 'g/cm3' },
    { id: 'omega', name: 'Entropy–enthalpy ratio', unit: '' },
    { id: 'cost', name: 'Cost', unit: 'currency/kg' },
  ],
  conditions: { annealTemperature: { label: 'Anneal temperature', unit: 'K' } },
};
const differences = (before: SearchView, after: SearchView) => differencesOf(before, after, words);
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
  expect(differences(view(asked), view(other, { dataVersion: 'b', prices }))).toEqual([
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

test('an empty list is nothing, as what is not there at all', () => {
  const required = { ...asked, elements: { pool: ['Al', 'Ni'], require: ['Al'], forbid: [] } };
  const { require: _, ...bare } = asked.elements;
  expect(differences(view(asked), view(required))).toEqual([
    { what: 'Elements that must be in it', before: null, after: 'Al' },
  ]);
  expect(differences(view(asked), view({ ...asked, elements: bare }))).toEqual([]);
});

test('the same asked again has no difference, whatever it is called and in whatever order', () => {
  const again = {
    ...asked,
    name: 'Again',
    limits: asked.limits.toReversed(),
    elements: { pool: ['Ni', 'Al'], require: [] },
  };
  expect(differences(view(asked), view(again))).toEqual([]);
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
  expect(differences(view(one), view(other))).toEqual([
    { what: 'Cr, at least, at.%', before: '15', after: '10' },
    { what: 'Number of elements, to', before: '6', after: '7' },
    { what: 'Ranking by density', before: 'as low as possible', after: 'near 7, within 1, weight 2' },
    { what: 'Anneal temperature, K', before: null, after: '1473' },
    { what: 'Expression merit', before: null, after: 'cost / density' },
  ]);
});

test('a quantity of one search alone has the name and unit that it has there, and numbers are written as asked', () => {
  const merit = { id: 'stiffness', name: 'stiffness', unit: 'GPa cm3/g' };
  const limits = [{ quantity: 'stiffness', min: 27.5 }];
  const other = view({ limits, lets: { stiffness: 'density * 2.5' } }, { moreQuantities: [merit] });
  const inLocale = (sentence: string) => sentence.replaceAll('.', ',');
  expect(differencesOf(view({ keep: 2.5 }), other, { ...words, inLocale })).toEqual([
    { what: 'Kept of all', before: '2,5', after: null },
    { what: 'Limit on stiffness', before: null, after: 'stiffness ≥ 27,5 GPa cm³/g' },
    { what: 'Expression stiffness', before: null, after: 'density * 2.5' },
  ]);
});
