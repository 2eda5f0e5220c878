import { expect, test } from 'vitest';
import { missingFor, valueFor } from '../../src/index.ts';
import { without } from '../fixtures/elements.ts';

// Guo & Liu, Prog. Nat. Sci. Mater. Int. 21 (2011) 433; number typed from memory: weak evidence.
test('CoCrFeMnNi has 3.27 %, to half of the last printed digit', () => {
  expect(Math.abs(valueFor('sizeMismatch', 'CoCrFeMnNi')! - 3.27)).toBeLessThanOrEqual(0.005);
});
// Closed form for two equal shares: δ = 100 |r₁ − r₂| / (r₁ + r₂); radii 143.17 and 142.9 pm.
test('two equal shares follow the closed form', () => {
  const closed = (100 * (143.17 - 142.9)) / (143.17 + 142.9);
  expect(valueFor('sizeMismatch', 'AlNb')).toBeCloseTo(closed, 12);
});
test('a single element has none, exactly', () => {
  expect(valueFor('sizeMismatch', 'Ni')).toBe(0);
});
test('an element without a radius gives null and is named', () => {
  const facts = without('metallicRadius', 'Cr');
  expect(valueFor('sizeMismatch', 'NiCr', facts)).toBeNull();
  expect(missingFor('sizeMismatch', { Cr: 1, Ni: 1 }, facts)).toEqual([
    { element: 'Cr', value: 'metallicRadius' },
  ]);
});
