import { expect, test } from 'vitest';
import { missingFor, valueFor } from '../../src/index.ts';
import { without } from '../fixtures/elements.ts';

// Guo & Liu, Prog. Nat. Sci. Mater. Int. 21 (2011) 433; numbers typed from memory: weak evidence.
test('CoCrFeMnNi has 0.14 and NbMoTaW 0.36, to half of the last printed digit', () => {
  expect(Math.abs(valueFor('electronegativitySpread', 'CoCrFeMnNi')! - 0.14)).toBeLessThanOrEqual(0.005);
  expect(Math.abs(valueFor('electronegativitySpread', 'NbMoTaW')! - 0.36)).toBeLessThanOrEqual(0.005);
});
// Closed form of two shares: |χ₁ − χ₂| √(c (1 − c)); Pauling: Al 1.61, Ni 1.91.
test('two shares follow the closed form', () => {
  expect(valueFor('electronegativitySpread', 'Al20Ni80')).toBeCloseTo(0.3 * Math.sqrt(0.2 * 0.8), 12);
});
test('a single element has none, exactly', () => {
  expect(valueFor('electronegativitySpread', 'Ni')).toBe(0);
});
test('an element without an electronegativity gives null and is named', () => {
  const facts = without('paulingElectronegativity', 'Cr');
  expect(valueFor('electronegativitySpread', 'NiCr', facts)).toBeNull();
  expect(missingFor('electronegativitySpread', { Cr: 1, Ni: 1 }, facts)).toEqual([
    { element: 'Cr', value: 'paulingElectronegativity' },
  ]);
});
