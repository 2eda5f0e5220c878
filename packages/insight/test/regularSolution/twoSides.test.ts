import { expect, test } from 'vitest';
import { twoSides } from '../../src/regularSolution/twoSides.ts';

test('either sign is a side, largest first, and a small part is left out', () => {
  const mode = { Co: -0.085, Cr: -0.346, Cu: 0.859, Fe: -0.361, Ni: -0.067 };
  expect(twoSides(mode, 0.5)).toEqual({ rising: ['Cu'], falling: ['Fe', 'Cr'] });
  expect(twoSides(mode, 0.2)).toEqual({ rising: ['Cu'], falling: ['Fe', 'Cr', 'Co'] });
});

test('equal parts that differ by rounding stand in the order of the alphabet', () => {
  expect(twoSides({ Zr: -0.449, Hf: -0.4489999999999999, Nb: 0.898 }, 0.5).falling).toEqual(['Hf', 'Zr']);
});

test('an element that stays is on neither side', () => {
  expect(twoSides({ Al: 0.7, Cr: 0, Ni: -0.7 }, 0)).toEqual({ rising: ['Al'], falling: ['Ni'] });
});
