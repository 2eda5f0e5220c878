import { expect, test } from 'vitest';
import { missingFor, valueFor, valuesOf } from '../../src/index.ts';
import { factsWith, withoutPair } from '../fixtures/elements.ts';

const free = (annealTemperature: number) =>
  valuesOf({ Al: 1, Ni: 1 }, factsWith(), ['mixingFreeEnergy'], { annealTemperature }).mixingFreeEnergy!;

// Closed form of two equal shares: H − RT ln 2; Al–Ni −22 kJ/mol (Takeuchi & Inoue 2005).
test('two equal shares follow the closed form at the default anneal of 1273.15 K', () => {
  const closed = -22 - (8.314462618 * 1273.15 * Math.LN2) / 1000;
  expect(valueFor('mixingFreeEnergy', 'AlNi')).toBeCloseTo(closed, 12);
});
test('the anneal temperature counts, 8.314462618 ln 2 J/mol for each kelvin', () => {
  expect((free(1000) - free(1500)) * 1000).toBeCloseTo(500 * 8.314462618 * Math.LN2, 8);
});
test('a pure element gains nothing, exactly', () => {
  expect(valueFor('mixingFreeEnergy', 'Ni')).toBe(0);
});
test('a pair without an enthalpy gives null and is named', () => {
  const facts = withoutPair('Cr', 'Ni');
  expect(valueFor('mixingFreeEnergy', 'NiCr', facts)).toBeNull();
  expect(missingFor('mixingFreeEnergy', { Cr: 1, Ni: 1 }, facts)).toEqual([
    { element: 'Cr-Ni', value: 'mixingEnthalpy' },
  ]);
});
