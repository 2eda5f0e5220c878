import { columnsOf, quantities } from '@tiegel/screening';
import { expect, test } from 'vitest';
import { typicalSpread } from '../../src/substitution/typicalSpread.ts';

test('published alloys differ typically by some g/cm3 of density and some electrons', () => {
  const { density, valenceElectronConcentration } = typicalSpread([
    'density',
    'valenceElectronConcentration',
  ]);
  expect(density).toBeGreaterThan(0.5);
  expect(density).toBeLessThan(5);
  expect(valenceElectronConcentration).toBeGreaterThan(0.5);
  expect(valenceElectronConcentration).toBeLessThan(5);
});

test('without prices a cost has none', () => {
  expect(typicalSpread(['cost'])).toEqual({ cost: null });
});

test('every quantity that needs no price has one, but for those that most alloys share', () => {
  const priceless = quantities.filter((quantity) => !columnsOf(quantity).elements.includes('price'));
  const spread = typicalSpread(priceless.map(({ id }) => id));
  for (const { id } of priceless) {
    if (id === 'homologousTemperature') continue;
    expect(spread[id], id).toBeGreaterThan(0);
  }
});
