import { expect, test } from 'vitest';
import { missingFor, valueFor } from '../../src/index.ts';
import { without } from '../fixtures/elements.ts';

// CoCrFeMnNi, from E = 202 and G = 80 GPa measured (Laplanche et al., J. Alloys Compd. 623 (2015) 348, from memory): B = EG/(3(3G − E)) = 142 GPa, which small errors of E and G move by 20 %.
test('CoCrFeMnNi comes within 20 % of 142 GPa', () => {
  expect(Math.abs(valueFor('bulkModulus', 'CoCrFeMnNi')! - 142)).toBeLessThanOrEqual(28.4);
});
// Closed form: the mean over the atoms; Cr 160 and Ni 180 GPa (elements of the periodic table, from memory).
test('two shares follow the closed form', () => {
  expect(valueFor('bulkModulus', 'Cr25Ni75')).toBeCloseTo(0.25 * 160 + 0.75 * 180, 12);
});
test('a single element has its own, exactly', () => {
  expect(valueFor('bulkModulus', 'Ni')).toBe(180);
});
test('an element without a value gives null and is named; carbon has none', () => {
  const facts = without('bulkModulus', 'Cr');
  expect(valueFor('bulkModulus', 'NiCr', facts)).toBeNull();
  expect(missingFor('bulkModulus', { Cr: 1, Ni: 1 }, facts)).toEqual([
    { element: 'Cr', value: 'bulkModulus' },
  ]);
  expect(valueFor('bulkModulus', 'Fe99C1')).toBeNull();
});
