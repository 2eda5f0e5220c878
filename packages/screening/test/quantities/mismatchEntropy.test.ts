import fc from 'fast-check';
import { expect, test } from 'vitest';
import { missingFor, valueFor } from '../../src/index.ts';
import { factsWith, without } from '../fixtures/elements.ts';
import { hardSpheres } from '../fixtures/hardSpheres.ts';
import { random } from '../fixtures/random.ts';

const facts = factsWith();

// The equation as published (Mansoori et al. 1971; Takeuchi & Inoue 2000, from memory), y₃ included.
test('follows its definition', () => {
  fc.assert(
    fc.property(fc.integer(), (seed) => {
      const source = random(seed);
      const members = source.some(facts.symbols, source.whole(2, 6));
      const alloy = Object.fromEntries(members.map((symbol) => [symbol, source.whole(1, 60)]));
      const found = valueFor('mismatchEntropy', alloy)!;
      expect(Math.abs(found - hardSpheres(alloy, facts))).toBeLessThan(1e-11);
      expect(found).toBeGreaterThan(0);
    }),
  );
});
test('equal radii, and a single element, have none, exactly', () => {
  const equal = { ...facts, columns: { ...facts.columns, metallicRadius: facts.symbols.map(() => 125.3) } };
  expect(valueFor('mismatchEntropy', 'Co10Cr20Ni70', equal)).toBe(0);
  expect(valueFor('mismatchEntropy', 'Ni')).toBe(0);
});
test('an element without a radius gives null and is named', () => {
  const lacking = without('metallicRadius', 'Cr');
  expect(valueFor('mismatchEntropy', 'NiCr', lacking)).toBeNull();
  expect(missingFor('mismatchEntropy', { Cr: 1, Ni: 1 }, lacking)).toEqual([
    { element: 'Cr', value: 'metallicRadius' },
  ]);
});
