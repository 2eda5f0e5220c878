import { expect, test } from 'vitest';
import { checkSearch } from '../../src/asking/check.ts';
import { gridDraw } from '../../src/distributions/gridDraw.ts';

test('a point passes only where the limited quantity has a value', () => {
  const { plan } = checkSearch(
    {
      elements: { pool: ['Co', 'Cr', 'Fe', 'Mn', 'Ni'] },
      components: 3,
      fractions: { step: 10 },
      lets: { root: 'sqrt(mixingEnthalpy)' },
      limits: [{ quantity: 'root', max: 1000 }],
      rank: [{ quantity: 'density', prefer: 'low' }],
    },
    { prices: null },
    1e6,
  );
  const { passes, values, whole } = gridDraw(plan, ['mixingEnthalpy'], 1000);
  expect(whole).toBe(true);
  // Below 0 there is no root, and no root here comes near the limit.
  expect(passes).toEqual(Array.from(values.get('mixingEnthalpy')!, (enthalpy) => enthalpy >= 0));
  expect(new Set(passes).size).toBe(2);
});
