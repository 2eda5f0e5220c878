import { expect, test } from 'vitest';
import { missingFor, valueFor } from '../../src/index.ts';
import { without } from '../fixtures/elements.ts';

// Measured on CoCrFeMnNi near room temperature: 80 GPa (Laplanche et al., J. Alloys Compd. 623 (2015) 348, from memory). The rule of mixtures is no better than ten per cent.
test('CoCrFeMnNi comes within ten per cent of the measured 80 GPa', () => {
  expect(Math.abs(valueFor('shearModulus', 'CoCrFeMnNi')! - 80)).toBeLessThanOrEqual(8);
});
// Closed form: the mean over the atoms; Cr 115 and Ni 76 GPa (elements of the periodic table, from memory).
test('two shares follow the closed form', () => {
  expect(valueFor('shearModulus', 'Cr25Ni75')).toBeCloseTo(0.25 * 115 + 0.75 * 76, 12);
});
test('a single element has its own, exactly', () => {
  expect(valueFor('shearModulus', 'Ni')).toBe(76);
});
test('an element without a value gives null and is named; carbon has none', () => {
  const facts = without('shearModulus', 'Cr');
  expect(valueFor('shearModulus', 'NiCr', facts)).toBeNull();
  expect(missingFor('shearModulus', { Cr: 1, Ni: 1 }, facts)).toEqual([
    { element: 'Cr', value: 'shearModulus' },
  ]);
  expect(valueFor('shearModulus', 'Fe99C1')).toBeNull();
});
