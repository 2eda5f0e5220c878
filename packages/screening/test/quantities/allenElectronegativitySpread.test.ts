import { expect, test } from 'vitest';
import { missingFor, valueFor } from '../../src/index.ts';
import { without } from '../fixtures/elements.ts';

// No printed value of an alloy is at hand. Worked by hand from Allen's values, Mann, Meek, Knight,
// Capitani & Allen, J. Am. Chem. Soc. 122 (2000) 5132 (typed from memory): Cr 1.65, Mn 1.75, Fe 1.80,
// Co 1.84, Ni 1.88; mean 1.784, squares of the deviations 0.03172, √(0.03172/5)/1.784 = 4.465 %.
test('CoCrFeMnNi has 4.465 %', () => {
  expect(Math.abs(valueFor('allenElectronegativitySpread', 'CoCrFeMnNi')! - 4.465)).toBeLessThanOrEqual(
    0.0005,
  );
});
// Closed form of two equal shares: 100 |χ₁ − χ₂| / (χ₁ + χ₂).
test('two equal shares follow the closed form', () => {
  expect(valueFor('allenElectronegativitySpread', 'CrNi')).toBeCloseTo((100 * 0.23) / 3.53, 10);
});
test('a single element has none, exactly', () => {
  expect(valueFor('allenElectronegativitySpread', 'Ni')).toBe(0);
});
test('an element without an electronegativity gives null and is named', () => {
  const facts = without('allenElectronegativity', 'Cr');
  expect(valueFor('allenElectronegativitySpread', 'NiCr', facts)).toBeNull();
  expect(missingFor('allenElectronegativitySpread', { Cr: 1, Ni: 1 }, facts)).toEqual([
    { element: 'Cr', value: 'allenElectronegativity' },
  ]);
});
