import { expect, test } from 'vitest';
import { missingFor, valueFor } from '../../src/index.ts';
import { withoutPair } from '../fixtures/elements.ts';

// Takeuchi & Inoue, Mater. Trans. 46 (2005) 2817 (from memory): Al–Ni −22, Al–Co −19, Al–Fe −11, Al–Cr −10.
test('AlCoCrFeNi has −22 kJ/mol, of aluminium with nickel', () => {
  expect(valueFor('lowestPairEnthalpy', 'AlCoCrFeNi')).toBe(-22);
});
test('does not depend on the amounts', () => {
  expect(valueFor('lowestPairEnthalpy', 'Al1Ni1Co98')).toBe(-22);
});
test('of two elements is their own', () => {
  expect(valueFor('lowestPairEnthalpy', 'CuFe')).toBe(13);
});
test('a pure element has none', () => {
  expect(valueFor('lowestPairEnthalpy', 'Ni')).toBeNull();
});
test('a pair without an enthalpy gives null and is named', () => {
  const facts = withoutPair('Cr', 'Ni');
  expect(valueFor('lowestPairEnthalpy', 'AlCrNi', facts)).toBeNull();
  expect(missingFor('lowestPairEnthalpy', { Cr: 1, Ni: 1 }, facts)).toEqual([
    { element: 'Cr-Ni', value: 'mixingEnthalpy' },
  ]);
});
