import { expect, test } from 'vitest';
import { missingFor, valueFor } from '../../src/index.ts';
import { withoutPair } from '../fixtures/elements.ts';

// Takeuchi & Inoue, Mater. Trans. 46 (2005) 2817 (from memory): Cu–Fe 13, Cr–Cu 12, Co–Cu 6, Cu–Ni 4.
test('CoCrCuFeNi has 13 kJ/mol, of copper with iron', () => {
  expect(valueFor('highestPairEnthalpy', 'CoCrCuFeNi')).toBe(13);
});
test('does not depend on the amounts', () => {
  expect(valueFor('highestPairEnthalpy', 'Cu1Fe1Ni98')).toBe(13);
});
test('of two elements is their own', () => {
  expect(valueFor('highestPairEnthalpy', 'AlNi')).toBe(-22);
});
test('a pure element has none', () => {
  expect(valueFor('highestPairEnthalpy', 'Ni')).toBeNull();
});
test('a pair without an enthalpy gives null and is named', () => {
  const facts = withoutPair('Cr', 'Ni');
  expect(valueFor('highestPairEnthalpy', 'AlCrNi', facts)).toBeNull();
  expect(missingFor('highestPairEnthalpy', { Cr: 1, Ni: 1 }, facts)).toEqual([
    { element: 'Cr-Ni', value: 'mixingEnthalpy' },
  ]);
});
