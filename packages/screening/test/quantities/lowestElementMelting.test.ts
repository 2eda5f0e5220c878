import { expect, test } from 'vitest';
import { missingFor, valueFor } from '../../src/index.ts';
import { without } from '../fixtures/elements.ts';

// CRC Handbook: aluminium melts at 933.47 K, copper at 1357.77 K.
test('is that of aluminium in AlCoCrFeNi and of copper in CoCrCuFeNi', () => {
  expect(valueFor('lowestElementMelting', 'AlCoCrFeNi')).toBe(933.47);
  expect(valueFor('lowestElementMelting', 'CoCrCuFeNi')).toBe(1357.77);
});
test('does not depend on the amounts', () => {
  expect(valueFor('lowestElementMelting', 'Al1Ni99')).toBe(933.47);
});
test('a single element has its own', () => {
  expect(valueFor('lowestElementMelting', 'Ni')).toBe(1728);
});
test('an element without a melting point gives null and is named; carbon has none', () => {
  const facts = without('meltingTemperature', 'Cr');
  expect(valueFor('lowestElementMelting', 'NiCr', facts)).toBeNull();
  expect(missingFor('lowestElementMelting', { Cr: 1, Ni: 1 }, facts)).toEqual([
    { element: 'Cr', value: 'meltingTemperature' },
  ]);
  expect(valueFor('lowestElementMelting', 'Fe99C1')).toBeNull();
});
