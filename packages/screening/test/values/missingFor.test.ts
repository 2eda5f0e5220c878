import { expect, test } from 'vitest';
import { missingFor, valuesOf } from '../../src/index.ts';
import { factsWith, without, withoutPair } from '../fixtures/elements.ts';

const composition = { Al: 25, Cr: 25, Ni: 50 };

test('nothing lacks where all is known', () => {
  expect(missingFor('density', composition, factsWith())).toEqual([]);
});

test('an element value that lacks is named with its element', () => {
  const facts = without('density', 'Cr');
  expect(missingFor('costPerLitre', composition, facts)).toEqual([
    { element: 'Al', value: 'price' },
    { element: 'Cr', value: 'price' },
    { element: 'Ni', value: 'price' },
    { element: 'Cr', value: 'density' },
  ]);
});

test('a pair value that lacks is named with both elements', () => {
  const facts = withoutPair('Ni', 'Al');
  expect(missingFor('omega', composition, facts)).toEqual([{ element: 'Al-Ni', value: 'mixingEnthalpy' }]);
  expect(valuesOf(composition, facts, ['omega', 'mixingEnthalpy'])).toEqual({
    omega: null,
    mixingEnthalpy: null,
  });
});

test('what lacks of an absent element is no obstacle', () => {
  const facts = without('density', 'Cr');
  expect(missingFor('density', { Al: 50, Cr: 0, Ni: 50 }, facts)).toEqual([]);
  expect(valuesOf({ Al: 50, Ni: 50 }, facts, ['density']).density).not.toBeNull();
});
