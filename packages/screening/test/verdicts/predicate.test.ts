import { describe, expect, test } from 'vitest';
import { predicateHolds, predicateText, quantitiesOf } from '../../src/index.ts';
import { contains, every, onlyOf, range } from '../../src/verdicts/predicate.ts';

describe('a predicate', () => {
  const both = every(range('density', { atMost: 8 }), contains('Al', 'Ti'));

  test('holds where every part does', () => {
    expect(predicateHolds(both, { density: 7 }, ['Al', 'Ni'])).toBe(true);
    expect(predicateHolds(both, { density: 9 }, ['Al', 'Ni'])).toBe(false);
    expect(predicateHolds(both, { density: 7 }, ['Co', 'Ni'])).toBe(false);
  });
  test('is missing where a value is, whatever the rest says', () => {
    expect(predicateHolds(both, { density: null }, ['Al'])).toBeNull();
    expect(predicateHolds(both, {}, ['Co'])).toBeNull();
  });
  test('may ask for nothing but some elements', () => {
    expect(predicateHolds(onlyOf('Nb', 'Ti'), {}, ['Nb'])).toBe(true);
    expect(predicateHolds(onlyOf('Nb', 'Ti'), {}, ['Nb', 'Al'])).toBe(false);
  });
  test('names its quantities once', () => {
    expect(quantitiesOf(every(both, range('density', { above: 1 }), range('omega', { above: 1 })))).toEqual([
      'density',
      'omega',
    ]);
  });
});

test.for([
  [range('density', { above: 5, below: 8 }), '5 < ρ < 8 g/cm3'],
  [range('density', { atLeast: 5, below: 8 }), '5 ≤ ρ < 8 g/cm3'],
  [range('omega', { atLeast: 1.1 }), 'Ω ≥ 1.1'],
  [range('omega', { below: -1.25 }), 'Ω < −1.25'],
  [every(range('omega', { above: 2 }), contains('Cr', 'V')), 'Ω > 2, with Cr or V'],
  [onlyOf('Nb', 'Ti'), 'of Nb, Ti alone'],
] as const)('%o reads %s', ([predicate, text]) => {
  expect(predicateText(predicate)).toBe(text);
});

test('a quantity that is no closed formula is written as it is told to', () => {
  expect(predicateText(range('kingPhi', { atLeast: 1 }), { kingPhi: { symbol: 'Φ', unit: '' } })).toBe(
    'Φ ≥ 1',
  );
});
