import { expect, test } from 'vitest';
import { missingFor, valueFor } from '../../src/index.ts';
import { factsWith, without } from '../fixtures/elements.ts';

// Definition: Singh et al., Intermetallics 53 (2014) 112. No printed value is at hand; from δ = 3.27 %
// (Guo & Liu 2011, from memory) and ΔS = R ln 5: 13.38/3.27² = 1.251, to what the rounding of δ allows.
test('CoCrFeMnNi has 1.25 J/(mol K)', () => {
  expect(Math.abs(valueFor('lambda', 'CoCrFeMnNi')! - 1.251)).toBeLessThanOrEqual(0.004);
});
// Closed form of two equal shares: R ln 2 ((r₁ + r₂) / (100 (r₁ − r₂)))²; radii 143.17 and 142.9 pm.
test('two equal shares follow the closed form', () => {
  const mismatch = (100 * (143.17 - 142.9)) / (143.17 + 142.9);
  expect(valueFor('lambda', 'AlNb')! / ((8.314462618 * Math.LN2) / mismatch ** 2)).toBeCloseTo(1, 12);
});
test('equal radii, and a single element, stop at 10,000', () => {
  const facts = factsWith();
  const equal = { ...facts, columns: { ...facts.columns, metallicRadius: facts.symbols.map(() => 125) } };
  expect(valueFor('lambda', 'CrNi', equal)).toBe(10_000);
  expect(valueFor('lambda', 'Ni')).toBe(10_000);
});
test('an element without a radius gives null, even alone, and is named', () => {
  const facts = without('metallicRadius', 'Cr');
  expect(valueFor('lambda', 'NiCr', facts)).toBeNull();
  expect(valueFor('lambda', 'Cr', facts)).toBeNull();
  expect(missingFor('lambda', { Cr: 1, Ni: 1 }, facts)).toEqual([{ element: 'Cr', value: 'metallicRadius' }]);
});
