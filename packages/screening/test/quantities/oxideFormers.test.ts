import { expect, test } from 'vitest';
import { missingFor, valueFor } from '../../src/index.ts';

// Counting: aluminium, chromium and silicon.
test('AlCoCrFeNi has 40 at.%, CoCrFeMnNi 20 and NbMoTaW none', () => {
  expect(valueFor('oxideFormers', 'AlCoCrFeNi')).toBe(40);
  expect(valueFor('oxideFormers', 'CoCrFeMnNi')).toBe(20);
  expect(valueFor('oxideFormers', 'NbMoTaW')).toBe(0);
});
test('whole percents are whole', () => {
  for (let share = 1; share < 100; share++) {
    expect(valueFor('oxideFormers', { Al: share, Ni: 100 - share })).toBe(share);
  }
});
test('silicon alone is 100, nickel alone 0', () => {
  expect(valueFor('oxideFormers', 'Si')).toBe(100);
  expect(valueFor('oxideFormers', 'Ni')).toBe(0);
});
test('needs no data, so that nothing can lack', () => {
  const facts = { symbols: ['Cr', 'Ni'], columns: {}, pairs: {} };
  expect(valueFor('oxideFormers', 'CrNi', facts)).toBe(50);
  expect(missingFor('oxideFormers', { Cr: 1, Ni: 1 }, facts)).toEqual([]);
});
