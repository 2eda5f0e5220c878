import { expect, test } from 'vitest';
import { missingFor, valueFor } from '../../src/index.ts';
import { without } from '../fixtures/elements.ts';

// CRC Handbook: manganese boils at 2334 K, chromium melts at 2180 K; zinc boils at 1180 K, copper
// melts at 1357.77 K, so that brass boils off its zinc.
test('CoCrFeMnNi has 154 K, and zinc boils before copper melts', () => {
  expect(valueFor('vapourMargin', 'CoCrFeMnNi')).toBe(2334 - 2180);
  expect(valueFor('vapourMargin', 'CuZn')).toBeCloseTo(1180 - 1357.77, 10);
});
test('does not depend on the amounts', () => {
  expect(valueFor('vapourMargin', 'Cr1Mn99')).toBe(154);
});
test('a single element has its own gap', () => {
  expect(valueFor('vapourMargin', 'Ni')).toBe(3186 - 1728);
});
test('an element without a boiling point gives null and is named', () => {
  const facts = without('boilingTemperature', 'Cr');
  expect(valueFor('vapourMargin', 'NiCr', facts)).toBeNull();
  expect(missingFor('vapourMargin', { Cr: 1, Ni: 1 }, facts)).toEqual([
    { element: 'Cr', value: 'boilingTemperature' },
  ]);
});
