import { expect, test } from 'vitest';
import { regularSolution } from '../../src/regularSolution/regularSolution.ts';
import { facts, withoutPair } from '../fixtures/alloys.ts';

// Takeuchi & Inoue 2005 prints −22 kJ/mol for Al–Ni: Ω = 4 · −22 000 J/mol.
test('interactions are four times the pair enthalpies, in joules', () => {
  expect(regularSolution({ Ni: 1, Al: 3 }, facts)).toEqual({
    symbols: ['Al', 'Ni'],
    fractions: [0.75, 0.25],
    interactions: [
      [0, -88_000],
      [-88_000, 0],
    ],
  });
});

test('an element of amount 0 is absent', () => {
  expect(regularSolution({ Ni: 1, Al: 0 }, facts)?.symbols).toEqual(['Ni']);
});

test('an unknown pair leaves no solution to speak of, unless one of the two is absent', () => {
  expect(regularSolution({ Al: 1, Cr: 1, Ni: 1 }, withoutPair('Al', 'Ni'))).toBeNull();
  expect(regularSolution({ Al: 1, Cr: 1 }, withoutPair('Al', 'Ni'))).not.toBeNull();
});

test('a column that the facts lack altogether is unknown for every pair', () => {
  expect(regularSolution({ Al: 1, Ni: 1 }, { ...facts, pairs: {} })).toBeNull();
});
