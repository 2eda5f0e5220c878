import type { SearchView } from '@tiegel/contract';
import { expect, test } from 'vitest';
import { differences } from '../../src/watch/differences.ts';

const view = (specification: object, rest: object = {}) =>
  ({ specification, dataVersion: 'a', engineVersion: '2', prices: null, ...rest }) as unknown as SearchView;
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
    { what: 'elements pool', before: 'Al Ni', after: 'Al Ni Ti' },
    { what: 'limits density', before: '{"max":8}', after: null },
    { what: 'limits omega', before: '{"min":1.1}', after: '{"min":2}' },
    { what: 'limits cost', before: null, after: '{"max":30}' },
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
  expect(differences(view(asked), view(again))).toEqual([]);
});
