import { expect, test } from 'vitest';
import { compositionOf, parseAlloy } from '../src/index.ts';
import { codesFrom } from './faultsFrom.ts';

test('amounts become at.%, alphabetical', () => {
  expect(Object.entries(compositionOf({ Ni: 3, Al: 1 }))).toEqual([
    ['Al', 25],
    ['Ni', 75],
  ]);
  expect(compositionOf({ Al: 26.9815385, Ni: 58.6934 }, { by: 'weight' })).toEqual({ Al: 50, Ni: 50 });
});

test('every amount that is none is pointed at', () => {
  const amounts = {
    Al: 0,
    Ni: -1,
    Fe: Number.NaN,
    Cr: Number.POSITIVE_INFINITY,
    Xx: 1,
    Na: 1,
    'a/b~c': 1,
    Co: 5,
  };
  expect(codesFrom(() => compositionOf(amounts, { pointer: '/compositions/0' }))).toEqual([
    'alloy/amount /compositions/0/Al',
    'alloy/amount /compositions/0/Ni',
    'alloy/amount /compositions/0/Fe',
    'alloy/amount /compositions/0/Cr',
    'element/unknown /compositions/0/Xx',
    'element/no-data /compositions/0/Na',
    'element/unknown /compositions/0/a~1b~0c',
  ]);
});

// 5e-324, the least number there is, over an atomic mass is 0, and 5 over 2e-311 is infinite.
test('amounts that vanish in computing are refused, and what is left is scaled without loss', () => {
  for (const by of ['atoms', 'weight'] as const) {
    expect(codesFrom(() => compositionOf({ Al: 5e-324 }, { by }))).toEqual(['alloy/amount /Al']);
    expect(codesFrom(() => compositionOf({ Al: 1e-320, Ni: 1 }, { by }))).toEqual(['alloy/amount /Al']);
  }
  const tiny = `0.${'0'.repeat(310)}1`;
  expect(codesFrom(() => parseAlloy(`(Al${tiny}Ni${tiny})5Fe`))).toEqual(['alloy/amount', 'alloy/amount']);
  expect(compositionOf({ Al: 1e-100, Ni: 3e-100 }).Al).toBeCloseTo(25, 12);
  const small = `0.${'0'.repeat(99)}1`;
  expect(parseAlloy(`((Al${small}Ni${small})${small})1000000000000000`).Al).toBeCloseTo(50, 12);
});

test('names that every object has are no elements', () => {
  expect(codesFrom(() => compositionOf(JSON.parse('{"constructor": 1, "__proto__": 1, "Ni": 1}')))).toEqual([
    'element/unknown /constructor',
    'element/unknown /__proto__',
  ]);
});

test('nothing at all is refused', () => {
  expect(codesFrom(() => compositionOf({}))).toEqual(['alloy/empty']);
});
