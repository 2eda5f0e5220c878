import { parseAlloy } from '@tiegel/elements';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { variant } from '../../src/substitution/variants.ts';
import { alloys } from '../fixtures/alloys.ts';

const cantor = parseAlloy('CoCrFeMnNi');

test('all of it by an element of the alloy', () => {
  expect(variant(cantor, 'Co', 1, ['Ni'])).toEqual({
    replaced: { Co: 20 },
    by: { Ni: 20 },
    composition: { Cr: 20, Fe: 20, Mn: 20, Ni: 40 },
  });
});

test('half of it by a new element', () => {
  expect(variant(cantor, 'Co', 0.5, ['Cu'])).toEqual({
    replaced: { Co: 10 },
    by: { Cu: 10 },
    composition: { Co: 10, Cr: 20, Cu: 10, Fe: 20, Mn: 20, Ni: 20 },
  });
});

test('several come in equal parts', () => {
  expect(variant(cantor, 'Co', 1, ['Ni', 'Cu']).by).toEqual({ Ni: 10, Cu: 10 });
});

test('atoms are exchanged, none are lost, and symbols stay alphabetical', () => {
  fc.assert(
    fc.property(
      alloys(['Al', 'Co', 'Cr', 'Fe', 'Ni']),
      fc.double({ min: 0.01, max: 1, noNaN: true }),
      fc.uniqueArray(fc.constantFrom<string>('Cr', 'Cu', 'Mn', 'Ti'), { minLength: 1 }),
      (alloy, share, partners) => {
        const replace = Object.keys(alloy).find((symbol) => !partners.includes(symbol));
        if (replace === undefined) return;
        const { composition } = variant(alloy, replace, share, partners);
        const total = (of: Record<string, number>) =>
          Object.values(of).reduce((sum, amount) => sum + amount, 0);
        expect(total(composition)).toBeCloseTo(total(alloy), 10);
        expect(Object.keys(composition)).toEqual(Object.keys(composition).sort());
        expect(replace in composition).toBe(share < 1);
      },
    ),
  );
});
