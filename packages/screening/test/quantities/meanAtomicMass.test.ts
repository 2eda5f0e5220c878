import { expect, test } from 'vitest';
import { missingFor, valueFor } from '../../src/index.ts';
import { without } from '../fixtures/elements.ts';

// IUPAC standard atomic weights 2021, abridged to five digits (typed from memory): Co 58.933, Cr 51.996,
// Fe 55.845, Mn 54.938, Ni 58.693: the mean is 56.081.
test('CoCrFeMnNi has 56.081 u', () => {
  expect(Math.abs(valueFor('meanAtomicMass', 'CoCrFeMnNi')! - 56.081)).toBeLessThanOrEqual(0.0005);
});
// Closed form: the mean by atoms; the molar mass of Ni₃Al is 203.06 g/mol, a quarter of it 50.77.
test('Ni3Al has a quarter of its molar mass', () => {
  expect(valueFor('meanAtomicMass', 'Ni3Al')).toBeCloseTo((3 * 58.6934 + 26.9815385) / 4, 12);
});
test('a single element has its own mass, exactly', () => {
  expect(valueFor('meanAtomicMass', 'Ni')).toBe(58.6934);
});
test('an element without a mass gives null and is named', () => {
  const facts = without('atomicMass', 'Cr');
  expect(valueFor('meanAtomicMass', 'NiCr', facts)).toBeNull();
  expect(missingFor('meanAtomicMass', { Cr: 1, Ni: 1 }, facts)).toEqual([
    { element: 'Cr', value: 'atomicMass' },
  ]);
});
