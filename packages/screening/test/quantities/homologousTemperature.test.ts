import { expect, test } from 'vitest';
import { missingFor, valueFor, valuesOf } from '../../src/index.ts';
import { factsWith, without } from '../fixtures/elements.ts';

// Lead (600.61 K, CRC) at 300 K is at 0.4995 of its melting point: the textbook case of creep at
// room temperature.
test('lead at 300 K is at half its melting point', () => {
  const { homologousTemperature } = valuesOf({ Pb: 100 }, factsWith(), ['homologousTemperature'], {
    serviceTemperature: 300,
  });
  expect(Math.abs(homologousTemperature! - 0.5)).toBeLessThan(0.001);
});
// Closed form: 293.15 K, the default, over the mean of Al 933.47 and Ni 1728 K.
test('two equal shares follow the closed form at room temperature', () => {
  expect(valueFor('homologousTemperature', 'AlNi')).toBeCloseTo((2 * 293.15) / (933.47 + 1728), 14);
});
test('a single element takes its own melting point', () => {
  expect(valueFor('homologousTemperature', 'Ni')).toBe(293.15 / 1728);
});
test('an element without a melting point gives null and is named', () => {
  const facts = without('meltingTemperature', 'Cr');
  expect(valueFor('homologousTemperature', 'NiCr', facts)).toBeNull();
  expect(missingFor('homologousTemperature', { Cr: 1, Ni: 1 }, facts)).toEqual([
    { element: 'Cr', value: 'meltingTemperature' },
  ]);
});
