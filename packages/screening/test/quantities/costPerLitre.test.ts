import { expect, test } from 'vitest';
import { missingFor, valueFor } from '../../src/index.ts';
import { factsWith } from '../fixtures/elements.ts';

const facts = factsWith({ Al: 2.5, Cr: 10, Ni: 20 });

// A litre of nickel weighs 8.9 kg (CRC Handbook, 8.9 g/cm³): at 20 per kg (invented) it costs 178.
test('a litre of nickel at 20 per kg costs 178', () => {
  expect(valueFor('costPerLitre', 'Ni', facts)).toBeCloseTo(178, 10);
});
test('it is cost times density', () => {
  for (const alloy of ['AlNi', 'Al10Cr30Ni60', 'CrNi3']) {
    const product = valueFor('cost', alloy, facts)! * valueFor('density', alloy, facts)!;
    expect(valueFor('costPerLitre', alloy, facts)! / product).toBeCloseTo(1, 13);
  }
});
test('an element without a price gives null and is named', () => {
  expect(valueFor('costPerLitre', 'FeNi', facts)).toBeNull();
  expect(missingFor('costPerLitre', { Fe: 1, Ni: 1 }, facts)).toEqual([{ element: 'Fe', value: 'price' }]);
});
