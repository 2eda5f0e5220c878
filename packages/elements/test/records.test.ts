import { expect, test } from 'vitest';
import { demoPrices, elementRecords, hazardsOf, pairRecords } from '../src/index.ts';

test('a record has every value under its name, with price, hazards and sources', () => {
  const iron = elementRecords(demoPrices).find(({ symbol }) => symbol === 'Fe')!;
  expect(iron).toMatchObject({
    symbol: 'Fe',
    atomicNumber: 26,
    name: 'Iron',
    period: 4,
    group: 8,
    atomicMass: 55.845,
    density: 7.87,
    metallicRadius: 124.12,
    meltingTemperature: 1811,
    boilingTemperature: 3134,
    paulingElectronegativity: 1.83,
    allenElectronegativity: 1.8,
    valenceElectrons: 8,
    price: demoPrices.prices.Fe!.pricePerKilogram,
    hazards: hazardsOf('Fe'),
    sources: { density: 'CRC', metallicRadius: 'SM' },
  });
});

test('what is unknown is null, never left out', () => {
  const records = elementRecords(null);
  expect(records).toHaveLength(56);
  expect(records.every(({ price }) => price === null)).toBe(true);
  expect(records.find(({ symbol }) => symbol === 'C')).toHaveProperty('meltingTemperature', null);
  const keys = records.map((record) => Object.keys(record).join());
  expect(new Set(keys).size).toBe(1);
  expect(JSON.parse(JSON.stringify(records))).toEqual(records);
});

test('pairs name both elements', () => {
  expect(pairRecords()).toContainEqual({ a: 'Al', b: 'Ni', mixingEnthalpy: -22 });
});
