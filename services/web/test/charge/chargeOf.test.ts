import { describe, expect, test } from 'vitest';
import {
  type ChargeDraft,
  type ElementRow,
  emptyElement,
  emptyMaster,
  type MasterRow,
} from '../../src/charge/chargeDraft.ts';
import { chargeOf } from '../../src/charge/chargeOf.ts';
import { totalInWords } from '../../src/charge/totalInWords.ts';

const element = (part: Partial<ElementRow>): ElementRow => ({ ...emptyElement, ...part });
const master = (part: Partial<MasterRow>): MasterRow => ({ ...emptyMaster, ...part });
const draft = (part: Partial<ChargeDraft> = {}): ChargeDraft => ({
  ...{ mass: '50', resolution: '0.001', name: '', elements: {}, masters: [], currency: '' },
  ...part,
});
const ferroniobium = { Fe: 50, Nb: 50 };

test('a form that is right has a sheet, and a decimal comma is read', () => {
  const { sheet, faults } = chargeOf(ferroniobium, draft({ mass: '50,5' }), null);
  expect([...faults]).toEqual([]);
  expect(sheet?.mass).toBe(50.5);
});

describe('what stands in the way is said at its field, and what would be right', () => {
  test.each<[Partial<ChargeDraft>, string, RegExp]>([
    [{ mass: '' }, '/mass', /Write a number of grams/],
    [{ mass: '50 g' }, '/mass', /“50 g” is not a number\. Write digits alone/],
    [{ mass: '1,000' }, '/mass', /could mean 1000 or 1\./],
    [{ mass: '0' }, '/mass', /Give grams above 0/],
    [{ mass: '-5' }, '/mass', /Give grams above 0/],
    [{ mass: '1e9' }, '/mass', /at most 10 million \(10 t\)/],
    [{ resolution: '0' }, '/resolution', /at least 0\.0000001/],
    [{ resolution: '60' }, '/resolution', /less than the batch mass/],
    [{ mass: '0.004', resolution: '0.0035' }, '/mass', /Charge at least .* weigh on a finer balance/],
    [{ elements: { Nb: element({ purity: '101' }) } }, '/elements/Nb/purity', /of "Nb" is 101 %.*1 to 100/],
    [{ elements: { Nb: element({ price: '-1' }) } }, '/elements/Nb/price', /Give a price per kg from 0/],
    [{ elements: { Nb: element({ loss: '95' }) } }, '/elements/Nb/loss', /from 0 to 90/],
    [{ masters: [master({ purity: '99' })] }, '/masters/0/contains', /such as Fe34Nb66, or remove/],
    [
      { masters: [master({ contains: 'Xx50Fe50' })] },
      '/masters/0/contains',
      /"Xx".*is not the symbol of an element/,
    ],
    [{ masters: [master({ name: 'niobium' })] }, '/masters/0/name', /did you mean "Nb"\?/],
    [{ masters: [master({ name: 'Fe' })] }, '/masters/0/name', /Give each a name of its own/],
    [{ name: 'x'.repeat(201) }, '/name', /201 characters; at most 200 are kept\. Shorten/],
    [{ elements: { Nb: element({ absent: true }) } }, '/materials', /no material has Nb.*Add Nb as a metal/],
  ])('%j', (part, pointer, text) => {
    const { sheet, faults } = chargeOf(ferroniobium, draft(part), null);
    expect(sheet).toBeNull();
    expect([...faults.keys()]).toEqual([pointer]);
    expect(faults.get(pointer)!.join(' ')).toMatch(text);
  });
});

test('amounts that do not make 100 are taken as parts, which is said', () => {
  expect(totalInWords('Co60 Ni60')).toBe('The amounts make 120; they are taken as parts of it.');
  expect(totalInWords('Co20Cr20Fe20Mn20Ni20')).toBe('');
  expect(totalInWords('(CoCrFeNi)94Al6')).toBe('');
  expect(totalInWords('Co33.3Cr33.3Ni33.4')).toBe('');
  expect(totalInWords('CoCrNi')).toBe('');
});

// Invented: the project has −2 kJ/mol for Fe–Ni, no heat of mixing to speak of.
test('cautions know the pair values in force, and say whose they are', () => {
  const own = {
    ...{ a: 'Fe', b: 'Ni', mixingEnthalpy: -31, source: 'invented' },
    ...{ import: 4, importName: 'trials', importedAt: '2026-11-29T08:15:00.000Z' },
  };
  const mixing = (pairs: (typeof own)[]) =>
    chargeOf({ Fe: 50, Ni: 50 }, draft(), null, pairs).sheet!.cautions.find(
      ({ kind }) => kind === 'heat of mixing',
    );
  expect(mixing([])).toBeUndefined();
  expect(mixing([own])!.text).toContain('Fe–Ni −31 (own value of 2026-11-29, import 4 (trials): invented)');
});
