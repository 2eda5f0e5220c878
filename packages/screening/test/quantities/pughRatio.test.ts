import { expect, test } from 'vitest';
import { missingFor, valueFor } from '../../src/index.ts';
import { without } from '../fixtures/elements.ts';

// Pugh, Phil. Mag. 45 (1954) 823 (from memory): ductile metals such as Al, Cu and Nb lie above 1.75,
// brittle ones such as Cr, Be and Ir below it.
test('ductile metals lie above 1.75, brittle ones below', () => {
  for (const symbol of ['Al', 'Cu', 'Nb', 'Ni', 'Au']) {
    expect(valueFor('pughRatio', symbol), symbol).toBeGreaterThan(1.75);
  }
  for (const symbol of ['Cr', 'Be', 'Ir']) expect(valueFor('pughRatio', symbol), symbol).toBeLessThan(1.75);
});
// Closed form: a quotient of means; Cr 160 and 115, Ni 180 and 76 GPa.
test('two equal shares follow the closed form', () => {
  expect(valueFor('pughRatio', 'CrNi')).toBeCloseTo((160 + 180) / (115 + 76), 13);
});
test('a single element has its own', () => {
  expect(valueFor('pughRatio', 'Ni')).toBe(180 / 76);
});
test('an element without a modulus gives null and is named', () => {
  const facts = without('bulkModulus', 'Cr');
  expect(valueFor('pughRatio', 'NiCr', facts)).toBeNull();
  expect(missingFor('pughRatio', { Cr: 1, Ni: 1 }, facts)).toEqual([{ element: 'Cr', value: 'bulkModulus' }]);
});
