import { expect, test } from 'vitest';
import { jsonOf, tiegel } from '../../../test/fixtures/tiegel.ts';

test('data elements is a bare array with every promised key, null where nothing is known', async () => {
  const elements = await jsonOf(['data', 'elements']);
  expect(elements).toHaveLength(56);
  for (const key of [
    ...['symbol', 'atomicNumber', 'atomicMass', 'density', 'metallicRadius', 'meltingTemperature'],
    ...['boilingTemperature', 'paulingElectronegativity', 'allenElectronegativity', 'valenceElectrons'],
    ...['price', 'hazards'],
  ]) {
    for (const element of elements) expect(element).toHaveProperty(key);
  }
  const carbon = elements.find(({ symbol }: { symbol: string }) => symbol === 'C');
  expect(carbon.meltingTemperature).toBeNull();
});

test('a price list of one’s own replaces the invented one', async () => {
  const input = 'symbol,pricePerKilogram,currency,date,source\nNi,17.25,USD,2026-10-01,a quotation\n';
  const elements = await jsonOf(['data', 'elements', '--prices', '-'], { input });
  const priced = elements.filter(({ price }: { price: number | null }) => price !== null);
  expect(priced.map(({ symbol, price }: { symbol: string; price: number }) => [symbol, price])).toEqual([
    ['Ni', 17.25],
  ]);
});

test('data pairs holds each of the 1540 pairs once', async () => {
  const pairs = await jsonOf(['data', 'pairs']);
  expect(new Set(pairs.map(({ a, b }: { a: string; b: string }) => [a, b].sort().join('-'))).size).toBe(1540);
  expect(pairs).toHaveLength(1540);
});

test('for reading, tables stay within 80 characters and name units and the date of the prices', async () => {
  const { code, out } = await tiegel(['data', 'elements']);
  expect(code).toBe(0);
  expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
  expect(out).toMatch(/g\/cm³/);
  expect(out).toMatch(/Prices of \d{4}-\d\d-\d\d, invented/);
});

test('a reader that has enough ends the program with 0', async () => {
  const { code, error } = await tiegel(['data', 'elements', '--json'], { readOnly: 10 });
  expect({ code, error }).toEqual({ code: 0, error: '' });
});
