import { expect, test } from 'vitest';
import { missingFor, valueFor } from '../../src/index.ts';
import { without } from '../fixtures/elements.ts';

// CRC Handbook (from memory): molar volume of aluminium 9.99 and of nickel 6.59 cm³/mol.
test('aluminium has 9.99 and nickel 6.59 cm³/mol', () => {
  expect(Math.abs(valueFor('atomicVolume', 'Al')! - 9.99)).toBeLessThanOrEqual(0.005);
  expect(Math.abs(valueFor('atomicVolume', 'Ni')! - 6.59)).toBeLessThanOrEqual(0.006);
});
// Closed form: the mean over the atoms, and mean mass over density.
test('two shares follow the closed form', () => {
  const closed = (0.25 * 26.9815385) / 2.7 + (0.75 * 58.6934) / 8.9;
  expect(valueFor('atomicVolume', 'Al25Ni75')).toBeCloseTo(closed, 12);
});
test('times the density is the mean atomic mass', () => {
  const [volume, density, mass] = ['atomicVolume', 'density', 'meanAtomicMass'].map(
    (id) => valueFor(id, 'Al10Co30Nb60')!,
  );
  expect((volume! * density!) / mass!).toBeCloseTo(1, 13);
});
test('an element without a density gives null and is named', () => {
  const facts = without('density', 'Cr');
  expect(valueFor('atomicVolume', 'NiCr', facts)).toBeNull();
  expect(missingFor('atomicVolume', { Cr: 1, Ni: 1 }, facts)).toEqual([{ element: 'Cr', value: 'density' }]);
});
