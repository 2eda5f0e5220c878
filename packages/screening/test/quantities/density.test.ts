import { expect, test } from 'vitest';
import { missingFor, valueFor } from '../../src/index.ts';
import { without } from '../fixtures/elements.ts';

// Borg et al., Sci. Data 7 (2020) 430 (open data set): calculated densities, printed with one decimal.
test('CoCrFeMnNi has 8.0 and AlCoCrFeNi 6.7 g/cm³, to half of the last printed digit', () => {
  expect(Math.abs(valueFor('density', 'CoCrFeMnNi')! - 8)).toBeLessThanOrEqual(0.05);
  expect(Math.abs(valueFor('density', 'AlCoCrFeNi')! - 6.7)).toBeLessThanOrEqual(0.05);
});
// Closed form of two equal shares: (A₁ + A₂) / (A₁/ρ₁ + A₂/ρ₂); Al 26.9815385 u, 2.7 g/cm³, Ni 58.6934 u, 8.9 g/cm³.
test('two equal shares follow the closed form', () => {
  const closed = (26.9815385 + 58.6934) / (26.9815385 / 2.7 + 58.6934 / 8.9);
  expect(valueFor('density', 'AlNi')).toBeCloseTo(closed, 12);
});
test('a single element has its own density', () => {
  expect(valueFor('density', 'Ni')).toBeCloseTo(8.9, 14);
});
test('an element without a density gives null and is named', () => {
  const facts = without('density', 'Cr');
  expect(valueFor('density', 'NiCr', facts)).toBeNull();
  expect(missingFor('density', { Cr: 1, Ni: 1 }, facts)).toEqual([{ element: 'Cr', value: 'density' }]);
});
