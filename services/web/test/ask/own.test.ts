import { elementRecords, pairRecords } from '@tiegel/elements';
import { expect, test } from 'vitest';
import { emptyDraft, letRow, limitRow, rankRow } from '../../src/ask/draft/draft.ts';
import { newLetName } from '../../src/ask/own/newLetName.ts';
import { placeInFormula } from '../../src/ask/own/placeInFormula.ts';
import { readExpressions } from '../../src/ask/own/readExpressions.ts';
import { renamed } from '../../src/ask/own/renamed.ts';
import { significantDecimals } from '../../src/ask/own/significantDecimals.ts';
import { valueOfOwn } from '../../src/ask/own/valueOfOwn.ts';

test('an expression has its unit and what it needs, and may name one that stands before it', () => {
  const [stiffness, squared] = readExpressions([
    { name: 'stiffness', text: 'youngsModulus / density' },
    { name: 'squared', text: 'stiffness ^ 2' },
  ]);
  expect(stiffness!.view).toMatchObject({ id: 'stiffness', unit: stiffness!.unit! });
  expect(stiffness!.view!.needs.elements).toEqual(expect.arrayContaining(['youngsModulus', 'density']));
  expect(squared!.quantity).not.toBeNull();
});

test('an expression may not name one that stands after it', () => {
  const [first] = readExpressions([
    { name: 'first', text: 'second + 1' },
    { name: 'second', text: 'omega' },
  ]);
  expect(first!.quantity).toBeNull();
  expect(first!.textFaults).toHaveLength(1);
});

test('what is wrong is told at its character; a wrong name is no fault of the text', () => {
  const [misspelt, unfinished, named] = readExpressions([
    { name: 'a', text: 'omega + densty' },
    { name: 'b', text: 'omega +' },
    { name: 'density', text: 'omega * 2' },
  ]);
  expect(placeInFormula(misspelt!.textFaults[0]!)).toBe('omega + '.length);
  expect(placeInFormula(unfinished!.textFaults[0]!)).toBe('omega +'.length);
  expect(named!.textFaults).toEqual([]);
  expect(named!.nameFaults).toHaveLength(1);
});

test('the value of a typed alloy is that of the formula on its quantities', () => {
  const [own] = readExpressions([{ name: 'own', text: 'valenceElectronConcentration * 2 - 1' }]);
  const value = (alloy: string) => valueOfOwn(own!.quantity!, alloy, elementRecords(null), pairRecords(), {});
  // Iron has 8 valence electrons, nickel 10: (8 + 10)/2·2 − 1.
  expect(value('Fe50Ni50')).toEqual({ value: 17 });
  expect(value('FeXx')).toMatchObject({ fault: expect.stringMatching(/Xx/) });
});

test('limits and ranking follow a new name', () => {
  const row = letRow('merit', 'omega');
  const draft = { ...emptyDraft, lets: [row], limits: [limitRow('merit')], rank: [rankRow('merit')] };
  const next = { ...draft, ...renamed(draft, row, 'better', ['omega']) };
  expect([next.lets[0]!.name, next.limits[0]!.quantity, next.rank[0]!.quantity]).toEqual([
    'better',
    'better',
    'better',
  ]);
});

test('while a name is typed that another has, nothing is given to the other', () => {
  const [one, two] = [letRow('a'), letRow('b')];
  const draft = { ...emptyDraft, lets: [one!, two!], limits: [limitRow('a')], rank: [rankRow('b')] };
  const between = { ...draft, ...renamed(draft, two!, 'a', []) };
  expect([between.limits[0]!.quantity, between.rank[0]!.quantity]).toEqual(['a', 'b']);
  const after = { ...between, ...renamed(between, between.lets[1]!, 'ab', []) };
  expect([after.limits[0]!.quantity, after.rank[0]!.quantity]).toEqual(['a', 'ab']);
});

test('a new name is one that nothing has', () => {
  expect(newLetName(['omega'])).toBe('merit');
  expect(newLetName(['merit', 'merit2'])).toBe('merit3');
});

test.each([
  [12_345.6, 0],
  [12.3456, 2],
  [0.001_234_56, 6],
  [0, 0],
])('%d shows four significant digits with %d decimals', (value, decimals) => {
  expect(significantDecimals(value)).toBe(decimals);
});
