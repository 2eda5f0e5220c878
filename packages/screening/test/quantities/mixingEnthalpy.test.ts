import { expect, test } from 'vitest';
import { missingFor, valueFor } from '../../src/index.ts';
import { withoutPair } from '../fixtures/elements.ts';

// Guo & Liu, Prog. Nat. Sci. Mater. Int. 21 (2011) 433; number typed from memory: weak evidence.
test('AlCoCrFeNi has −12.32 kJ/mol, to half of the last printed digit', () => {
  expect(Math.abs(valueFor('mixingEnthalpy', 'AlCoCrFeNi')! + 12.32)).toBeLessThanOrEqual(0.005);
});
// Closed form of two shares: 4 H c (1 − c), H(Al–Ni) = −22 kJ/mol (Takeuchi & Inoue 2005).
test('two shares follow the closed form; equal shares give the pair value itself', () => {
  expect(valueFor('mixingEnthalpy', 'Al20Ni80')).toBeCloseTo(4 * -22 * 0.2 * 0.8, 12);
  expect(valueFor('mixingEnthalpy', 'AlNi')).toBe(-22);
});
test('a single element has none, exactly', () => {
  expect(valueFor('mixingEnthalpy', 'Ni')).toBe(0);
});
test('a pair without an enthalpy gives null and is named', () => {
  expect(valueFor('mixingEnthalpy', 'AlCrNi', withoutPair('Al', 'Cr'))).toBeNull();
  expect(missingFor('mixingEnthalpy', { Al: 1, Cr: 1, Ni: 1 }, withoutPair('Al', 'Cr'))).toEqual([
    { element: 'Al-Cr', value: 'mixingEnthalpy' },
  ]);
});
