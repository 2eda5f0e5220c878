import { expect, test } from 'vitest';
import { missingFor, valueFor } from '../../src/index.ts';
import { without } from '../fixtures/elements.ts';

// Senkov, Scott, Senkova, Miracle & Woodward, J. Alloys Compd. 509 (2011) 6043: 2523 K by the rule
// of mixtures (from memory, and to 3 K: their melting points are not at hand).
test('HfNbTaTiZr has 2523 K', () => {
  expect(Math.abs(valueFor('meltingTemperature', 'HfNbTaTiZr')! - 2523)).toBeLessThanOrEqual(3);
});
// Closed form: the mean by atoms; Al 933.47 K and Ni 1728 K (CRC Handbook).
test('two shares follow the closed form', () => {
  expect(valueFor('meltingTemperature', 'Al25Ni75')).toBeCloseTo(0.25 * 933.47 + 0.75 * 1728, 10);
});
test('a single element has its own melting point, exactly', () => {
  expect(valueFor('meltingTemperature', 'Ni')).toBe(1728);
});
test('an element without a melting point gives null and is named', () => {
  const facts = without('meltingTemperature', 'Cr');
  expect(valueFor('meltingTemperature', 'NiCr', facts)).toBeNull();
  expect(missingFor('meltingTemperature', { Cr: 1, Ni: 1 }, facts)).toEqual([
    { element: 'Cr', value: 'meltingTemperature' },
  ]);
});
