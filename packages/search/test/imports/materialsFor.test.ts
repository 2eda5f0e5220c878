import { expect, test } from 'vitest';
import { materialsFor } from '../../src/imports/materialsFor.ts';

// Invented.
const material = (name: string, contains: Record<string, number>, more = {}) => ({
  ...{ name, contains, purity: 100, price: 10 as number | null, currency: 'EUR' as string | null },
  ...{ meltingTemperature: null, import: 1 as number | null, ...more },
});
const pure = (symbol: string) => material(symbol, { [symbol]: 100 }, { import: null });
const inForce = [
  material('Ni pieces', { Ni: 100 }),
  material('FeNb66', { Fe: 34, Nb: 66 }, { currency: 'USD' }),
  material('AlTi', { Al: 50, Ti: 50 }),
  ...['Al', 'Fe', 'Nb', 'Ni'].map(pure),
];
const alloy = { Fe: 40, Nb: 20, Ni: 40 };

test('own materials within the alloy go before pure elements; a price in another currency is unknown', () => {
  const { materials, currency } = materialsFor(alloy, inForce, 'EUR');
  expect(currency).toBe('EUR');
  expect(materials.map(({ name, price }) => [name, price])).toEqual([
    ['Ni pieces', 10],
    ['FeNb66', null],
    ['Fe', 10],
    ['Nb', 10],
  ]);
});

test('without a price list the currency is that of the first that has a price', () => {
  const priceless = inForce.map((one) =>
    one.import === null ? { ...one, price: null, currency: null } : one,
  );
  expect(materialsFor(alloy, priceless, null).currency).toBe('EUR');
  expect(materialsFor({ Fe: 50, Nb: 50 }, priceless, null).currency).toBe('USD');
});
