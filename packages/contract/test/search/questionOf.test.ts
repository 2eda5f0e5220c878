import { expect, test } from 'vitest';
import { type Lookup, printedUnit, questionOf } from '../../src/index.ts';
import { check, request, symbols } from '../fixtures/known.ts';

const names: Record<string, [name: string, unit: string]> = {
  density: ['Density', 'g/cm3'],
  mixingEnthalpy: ['Mixing enthalpy', 'kJ/mol'],
  sizeMismatch: ['Size mismatch', '%'],
  omega: ['Entropy–enthalpy ratio', ''],
  valenceElectronConcentration: ['Valence electron concentration', ''],
};
const lookup: Lookup = (id) => ({ name: names[id]![0], unit: names[id]![1] });
const question = (changes: Record<string, unknown>) =>
  questionOf(check(request(changes)).specification, lookup);

test('pool, required, grid, limits and ranking follow each other', () => {
  const asked = question({
    elements: { pool: [...symbols].reverse(), require: ['Ni', 'Cr', 'Fe'], forbid: ['Co'] },
    components: { min: 5, max: 6 },
    fractions: { step: 5, min: 5, max: 35 },
    limits: [{ quantity: 'density', max: 8 }],
    rank: [{ quantity: 'sizeMismatch', prefer: 'low' }],
  });
  expect(asked).toBe(
    'five or six of Al Cr Cu Fe Mn Mo Ni Ti V, with Cr Fe Ni, 5–35 at.% in steps of 5, ' +
      'density ≤ 8 g/cm³, lowest size mismatch',
  );
});

test('limits on both sides, own bounds and negative numbers', () => {
  const asked = question({
    components: { min: 2, max: 4 },
    fractions: { step: 2.5, each: { Al: { max: 15 }, Cr: { min: 10, max: 20 }, Ti: { max: 5 } } },
    limits: [
      { quantity: 'mixingEnthalpy', min: -15, max: 5 },
      { quantity: 'valenceElectronConcentration', min: 7.6 },
    ],
    rank: [{ quantity: 'omega', prefer: 'high' }],
  });
  expect(asked).toBe(
    'two to four of Al Co Cr Fe Ni, 2.5–100 at.% in steps of 2.5 (Al ≤ 15, Cr 10 to 20), ' +
      'mixing enthalpy −15 to 5 kJ/mol, valence electron concentration ≥ 7.6, highest entropy–enthalpy ratio',
  );
});

test('equal shares, a target', () => {
  expect(question({ fractions: 'equimolar', rank: [{ quantity: 'density', prefer: { target: 8 } }] })).toBe(
    'five of Al Co Cr Fe Ni, in equal shares, density nearest to 8 g/cm³',
  );
});

test('a ranking of several', () => {
  const rank = [
    { quantity: 'density', prefer: 'low', from: 6, to: 9 },
    { quantity: 'valenceElectronConcentration', prefer: { target: 8 }, within: 1 },
  ];
  expect(question({ fractions: 'equimolar', rank })).toMatch(
    /, best balance of low density, valence electron concentration near 8$/,
  );
});

test.each([
  ['g/cm3', 'g/cm³'],
  ['cm2', 'cm²'],
  ['du⅓', '∛du'],
  ['J/(mol K)', 'J/(mol K)'],
])('the unit %s is printed as %s', (unit, printed) => {
  expect(printedUnit(unit)).toBe(printed);
});

test('an expression of a search’s own is called as it was typed', () => {
  const asked = questionOf(
    {
      ...check(request({ fractions: 'equimolar' })).specification,
      limits: [{ quantity: 'Merit', min: 1 }],
      rank: [{ quantity: 'yieldPerMass', prefer: 'high' }],
      keptOnly: [{ quantity: 'YieldPerMass', max: 2 }],
    },
    (id) => ({ name: id, unit: '' }),
  );
  expect(asked).toMatch(/, Merit ≥ 1, highest yieldPerMass, of those kept only YieldPerMass ≤ 2$/);
});
