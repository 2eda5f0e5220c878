import { expect, test } from 'vitest';
import { missingFor, valueFor } from '../../src/index.ts';
import { without } from '../fixtures/elements.ts';

// Measured on CoCrFeMnNi near room temperature: 202 GPa (Laplanche et al., J. Alloys Compd. 623 (2015) 348, from memory). The rule of mixtures is no better than ten per cent.
test('CoCrFeMnNi comes within ten per cent of the measured 202 GPa', () => {
  expect(Math.abs(valueFor('youngsModulus', 'CoCrFeMnNi')! - 202)).toBeLessThanOrEqual(20.2);
});
// Closed form: the mean over the atoms; Cr 279 and Ni 200 GPa (elements of the periodic table, from memory).
test('two shares follow the closed form', () => {
  expect(valueFor('youngsModulus', 'Cr25Ni75')).toBeCloseTo(0.25 * 279 + 0.75 * 200, 12);
});
test('a single element has its own, exactly', () => {
  expect(valueFor('youngsModulus', 'Ni')).toBe(200);
});
test('an element without a value gives null and is named; carbon has none', () => {
  const facts = without('youngsModulus', 'Cr');
  expect(valueFor('youngsModulus', 'NiCr', facts)).toBeNull();
  expect(missingFor('youngsModulus', { Cr: 1, Ni: 1 }, facts)).toEqual([
    { element: 'Cr', value: 'youngsModulus' },
  ]);
  expect(valueFor('youngsModulus', 'Fe99C1')).toBeNull();
});
