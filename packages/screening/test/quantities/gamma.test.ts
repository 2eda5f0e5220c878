import { expect, test } from 'vitest';
import { missingFor, valueFor } from '../../src/index.ts';
import { factsWith, without } from '../fixtures/elements.ts';

// Definition: Wang et al., Scr. Mater. 94 (2015) 28. The numbers are recomputed, not printed there.
test('CoCrFeMnNi has 1.096 and AlCoCrFeNi 1.169', () => {
  expect(Math.abs(valueFor('gamma', 'CoCrFeMnNi')! - 1.096)).toBeLessThanOrEqual(0.0005);
  expect(Math.abs(valueFor('gamma', 'AlCoCrFeNi')! - 1.169)).toBeLessThanOrEqual(0.0005);
});
// The definition as published, for radii 143.17 (Al) and 124.59 pm (Ni) and their mean.
test('two shares follow the definition', () => {
  const mean = 0.25 * 143.17 + 0.75 * 124.59;
  const cap = (r: number) => 1 - Math.sqrt(((r + mean) ** 2 - mean ** 2) / (r + mean) ** 2);
  expect(valueFor('gamma', 'Al25Ni75')).toBeCloseTo(cap(124.59) / cap(143.17), 12);
});
test('equal radii, and a single element, have 1, exactly', () => {
  const facts = factsWith();
  const equal = { ...facts, columns: { ...facts.columns, metallicRadius: facts.symbols.map(() => 125.3) } };
  expect(valueFor('gamma', 'CoCrNi', equal)).toBe(1);
  expect(valueFor('gamma', 'Ni')).toBe(1);
});
test('an element without a radius gives null and is named', () => {
  const facts = without('metallicRadius', 'Cr');
  expect(valueFor('gamma', 'NiCr', facts)).toBeNull();
  expect(missingFor('gamma', { Cr: 1, Ni: 1 }, facts)).toEqual([{ element: 'Cr', value: 'metallicRadius' }]);
});
