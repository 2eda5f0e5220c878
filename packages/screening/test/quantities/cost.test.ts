import { expect, test } from 'vitest';
import { missingFor, valueFor } from '../../src/index.ts';
import { factsWith } from '../fixtures/elements.ts';

// Arithmetic on IUPAC masses: a mole of each, 58.6934 g of Ni at 20 and 51.9961 g of Cr at 10 per kg
// (prices invented), is 1.693829 for 110.6895 g, 15.3025 per kg.
test('CrNi at 10 and 20 per kg costs 15.3025 per kg', () => {
  expect(Math.abs(valueFor('cost', 'CrNi', factsWith({ Cr: 10, Ni: 20 }))! - 15.3025)).toBeLessThanOrEqual(
    0.00005,
  );
});
// Closed form: the mean by mass lies where equal prices meet.
test('equal prices are the price of every alloy', () => {
  expect(valueFor('cost', 'Al10Cr30Ni60', factsWith({ Al: 7.5, Cr: 7.5, Ni: 7.5 }))).toBeCloseTo(7.5, 13);
});
test('a single element has its own price', () => {
  expect(valueFor('cost', 'Ni', factsWith({ Ni: 18.25 }))).toBeCloseTo(18.25, 13);
});
test('an element without a price gives null and is named; a price of 0 is a price', () => {
  expect(valueFor('cost', 'CrNi', factsWith({ Ni: 20 }))).toBeNull();
  expect(missingFor('cost', { Cr: 1, Ni: 1 }, factsWith({ Ni: 20 }))).toEqual([
    { element: 'Cr', value: 'price' },
  ]);
  expect(valueFor('cost', 'Cr', factsWith({ Cr: 0 }))).toBe(0);
});
