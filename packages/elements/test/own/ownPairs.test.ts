import { expect, test } from 'vitest';
import { type OwnPair, ownPairOf, ownPairOrigin, ownPairSources, pairSources } from '../../src/index.ts';

// All invented.
const pair: OwnPair = {
  ...{ a: 'Al', b: 'Ni', mixingEnthalpy: -24, source: 'calorimeter' },
  ...{ import: 3, importName: 'furnace trials', importedAt: '2026-11-29T08:15:00.000Z' },
};

test('the origin of a value names day, import and what was said of it', () => {
  expect(ownPairOrigin(pair)).toBe('own value of 2026-11-29, import 3 (furnace trials): calorimeter');
  expect(ownPairOrigin({ ...pair, importName: '', source: '' })).toBe('own value of 2026-11-29, import 3');
  const ofFile = { ...pair, import: null, importName: 'pairs.csv', importedAt: null, source: '' };
  expect(ownPairOrigin(ofFile)).toBe('own value of the file pairs.csv');
});

// Takeuchi & Inoue 2005: Al–Ni −22 kJ/mol.
test('values of one’s own are told with the published one beside, and only where they are among the elements', () => {
  expect(ownPairSources(['Ni', 'Fe', 'Al'], [pair])).toEqual([
    'Al–Ni −24 kJ/mol: own value of 2026-11-29, import 3 (furnace trials): calorimeter; published: −22',
  ]);
  expect(ownPairSources(['Co', 'Ni'], [pair])).toEqual([]);
  const [first, ...others] = pairSources(['Co', 'Ni'], [pair]);
  expect(first).toMatch(/^Pair enthalpies: Takeuchi & Inoue/);
  expect(others).toEqual([]);
});

test('of a pair twice the last holds, as in the facts', () => {
  const later = { ...pair, mixingEnthalpy: -30 };
  expect(ownPairOf([pair, later])('Ni', 'Al')).toBe(later);
  expect(ownPairSources(['Al', 'Ni'], [pair, later])).toHaveLength(1);
});
