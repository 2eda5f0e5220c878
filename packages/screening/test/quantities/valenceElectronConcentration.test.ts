import { expect, test } from 'vitest';
import { missingFor, valueFor } from '../../src/index.ts';
import { without } from '../fixtures/elements.ts';

// Arithmetic on group numbers, counted as Guo et al., J. Appl. Phys. 109 (2011) 103505 count them:
// Co 9, Cr 6, Fe 8, Mn 7, Ni 10, Al 3.
test('CoCrFeMnNi has 8 and AlCoCrFeNi 7.2, exactly', () => {
  expect(valueFor('valenceElectronConcentration', 'CoCrFeMnNi')).toBe(8);
  expect(valueFor('valenceElectronConcentration', 'AlCoCrFeNi')).toBe(7.2);
});
// Closed form: the mean by atoms.
test('two shares follow the closed form', () => {
  expect(valueFor('valenceElectronConcentration', 'Al35Ni65')).toBe((35 * 3 + 65 * 10) / 100);
});
test('a single element has its own number, exactly', () => {
  expect(valueFor('valenceElectronConcentration', 'W')).toBe(6);
});
test('an element without a number gives null and is named', () => {
  const facts = without('valenceElectrons', 'Cr');
  expect(valueFor('valenceElectronConcentration', 'NiCr', facts)).toBeNull();
  expect(missingFor('valenceElectronConcentration', { Cr: 1, Ni: 1 }, facts)).toEqual([
    { element: 'Cr', value: 'valenceElectrons' },
  ]);
});
