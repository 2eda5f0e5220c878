import { expect, test } from 'vitest';
import { missingFor, valueFor } from '../../src/index.ts';
import { without } from '../fixtures/elements.ts';

// Closed form for two equal shares: 100 |G₁ − G₂|/(G₁ + G₂); Cr 115 and Ni 76 GPa.
test('two equal shares follow the closed form', () => {
  expect(valueFor('modulusMismatch', 'CrNi')).toBeCloseTo((100 * (115 - 76)) / (115 + 76), 12);
});
// Written out: shear moduli of Co 75, Cr 115, Ni 76 GPa, mean 266/3.
test('three equal shares follow the definition', () => {
  const mean = 266 / 3;
  const squares = [75, 115, 76].reduce((sum, g) => sum + (1 - g / mean) ** 2 / 3, 0);
  expect(valueFor('modulusMismatch', 'CoCrNi')).toBeCloseTo(100 * Math.sqrt(squares), 11);
});
test('a single element has none, exactly', () => {
  expect(valueFor('modulusMismatch', 'Ni')).toBe(0);
});
test('an element without a shear modulus gives null and is named', () => {
  const facts = without('shearModulus', 'Cr');
  expect(valueFor('modulusMismatch', 'NiCr', facts)).toBeNull();
  expect(missingFor('modulusMismatch', { Cr: 1, Ni: 1 }, facts)).toEqual([
    { element: 'Cr', value: 'shearModulus' },
  ]);
});
