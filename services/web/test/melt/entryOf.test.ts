import { chargeRequestOf, chargeSheet } from '@tiegel/charge';
import { describe, expect, test } from 'vitest';
import { doubtfulDay } from '../../src/melt/doubtfulDay.ts';
import { doubtsAt, entryOf, isAsOnSheet } from '../../src/melt/entryOf.ts';
import {
  draftOfMelt,
  emptyDraft,
  type MeltDraft,
  rowsOfSheet,
  type WeighedRow,
} from '../../src/melt/meltDraft.ts';

const row = (part: Partial<WeighedRow> = {}): WeighedRow => ({
  ...{ material: 'Ni', mass: '10', contains: '', amounts: 'wt.%', purity: '' },
  ...part,
});
const draft = (part: Partial<MeltDraft> = {}): MeltDraft => ({ ...emptyDraft(), weighed: [row()], ...part });

test('a form that is right has no faults, and a decimal comma is read', () => {
  const { faults, entry, melt } = entryOf(draft({ weighed: [row({ mass: '10,5' })], ingot: '10.4' }), null);
  expect([...faults]).toEqual([]);
  expect([entry.weighed[0]!.mass, entry.ingot]).toEqual([10.5, 10.4]);
  expect(melt?.composition).toEqual({ Ni: 100 });
});

describe('what the server would refuse is said at its field, and what would be right', () => {
  const annealed = { annealed: true, annealTemperature: '1473', annealHours: '24' };
  test.each<[Partial<MeltDraft>, string, RegExp]>([
    [{ weighed: [] }, '/weighed', /at least one material with its mass/],
    [{ weighed: [row({ mass: '' })] }, '/weighed/0/mass', /what the balance showed/],
    [
      { weighed: [row({ mass: '-1' })] },
      '/weighed/0/mass',
      /^-1 is not possible here\. Write a number above 0/,
    ],
    [{ weighed: [row({ mass: '0' })] }, '/weighed/0/mass', /above 0/],
    [{ weighed: [row({ mass: '1e9' })] }, '/weighed/0/mass', /at most 10000000/],
    [{ weighed: [row({ mass: 'ten' })] }, '/weighed/0/mass', /“ten” is not a number/],
    [{ weighed: [row({ material: '' })] }, '/weighed/0/material', /is missing\. Begin with a symbol/],
    [{ weighed: [row({ material: 'nickel' })] }, '/weighed/0/material', /did you mean "Ni"\?/],
    [{ weighed: [row({ contains: 'Xx' })] }, '/weighed/0/contains', /"Xx".*is not the symbol of an element/],
    [{ weighed: [row({ purity: '120' })] }, '/weighed/0/purity', /Give wt\.% from 1 to 100/],
    [{ weighed: [row(), row()] }, '/weighed/1/material', /weighed twice\. Add the two/],
    [
      { weighed: Array.from({ length: 31 }, (_, at) => row({ material: `Ni ${at}` })) },
      '/weighed',
      /at most 30 are kept\. Add up/,
    ],
    [{ date: '' }, '/date', /^Write the day/],
    [{ ingot: '-3' }, '/ingot', /above 0/],
    [{ hardness: '20000' }, '/hardness', /at most 10000/],
    [{ density: '79' }, '/density', /at most 30\./],
    [{ ...annealed, annealTemperature: '' }, '/anneal/temperature', /in kelvin/],
    [{ ...annealed, annealTemperature: '9000' }, '/anneal/temperature', /at most 5000/],
    [{ ...annealed, annealHours: '0' }, '/anneal/hours', /above 0/],
    [{ phases: ['FCC'] }, '/methods', /not how.*Name at least one method/],
    [{ name: 'x'.repeat(300) }, '/name', /300 characters; at most 200 are kept\. Shorten/],
    [{ notes: 'x'.repeat(6000) }, '/notes', /at most 5000/],
    [{ charge: 'x'.repeat(300) }, '/charge', /at most 200/],
  ])('%j', (part, pointer, text) => {
    const { faults } = entryOf(draft(part), null);
    expect([...faults.keys()]).toEqual([pointer]);
    expect(faults.get(pointer)!.join(' ')).toMatch(text);
  });
});

test('what is odd but possible is said and does not stand in the way', () => {
  expect(doubtfulDay('2030-01-01', '2026-11-25')).toMatch(/still to come/);
  expect(doubtfulDay('0026-11-25', '2026-11-25')).toMatch(/long ago/);
  expect(doubtfulDay('2026-11-25', '2026-11-25')).toBe('');
  const doubtsIn = (part: Partial<MeltDraft>, pointer: string) => {
    const written = entryOf(draft({ date: '2099-01-01', ...part }), null);
    expect(written.faults.size).toBe(0);
    return doubtsAt(written, pointer);
  };
  expect(doubtsIn({ ingot: '100' }, '/ingot')).toMatch(/more than the 10\.000/);
  expect(doubtsIn({ ingot: '9.9' }, '/ingot')).toBe('');
  expect(doubtsIn({ ingot: '7' }, '/ingot')).toMatch(/30 % lighter/);
  // Nickel has 8.9 g/cm3.
  expect(doubtsIn({ density: '1.5' }, '/density')).toMatch(/far from the 8\.9/);
  expect(doubtsIn({ density: '8.8' }, '/density')).toBe('');
});

test('doubts about what was weighed stand at its row, also behind one that is empty', () => {
  const sheet = chargeSheet(
    chargeRequestOf({ composition: { Fe: 50, Ni: 50 }, mass: 50, resolution: 0.001 }, null),
  );
  const weighed = [
    row({ material: 'Fe', mass: '2437,5' }),
    row({ mass: '25,6' }),
    row({ material: '', mass: '' }),
    row({ material: 'Zr', mass: '9' }),
  ];
  const { doubts, faults } = entryOf(draft({ weighed }), sheet);
  expect([...faults]).toEqual([]);
  expect([...doubts.keys()]).toEqual(['/weighed/0', '/weighed/3']);
  expect(doubts.get('/weighed/0')!.join()).toMatch(/^Fe: 2[,]?437\.5 g were weighed/);
  expect(doubts.get('/weighed/3')!.join()).toMatch(/^Zr is not on the charge sheet/);
});

const recorded = entryOf(draft({ notes: 'as cast', hardness: '150' }), null).entry;

test('losses that a melt says itself stay where the form is changed', () => {
  const entry = { ...recorded, loss: { Ni: 2 } };
  expect(entryOf(draftOfMelt(entry), null).entry).toEqual(entry);
});

test('a material of the charge sheet needs its mass alone', () => {
  const sheet = chargeSheet(
    chargeRequestOf({ composition: { Fe: 50, Ni: 50 }, mass: 50, resolution: 0.001 }, null),
  );
  const weighed = [row({ material: 'Fe', mass: '' }), row({ mass: '25' })];
  const { faults } = entryOf(draft({ weighed }), sheet);
  expect([...faults.keys()]).toEqual(['/weighed/0/mass']);
});

test('another lot of a material of the charge sheet is kept as it was written down', () => {
  const sheet = chargeSheet(
    chargeRequestOf({ composition: { Co: 50, Ni: 50 }, mass: 20, resolution: 0.001 }, null),
  );
  const kept = rowsOfSheet(sheet, [row({ purity: '98' })]);
  expect(kept.map(({ material, purity }) => [material, purity]).toSorted()).toEqual([
    ['Co', ''],
    ['Ni', '98'],
  ]);
  for (const one of kept) expect(isAsOnSheet(one, sheet)).toBe(one.material === 'Co');
  const { entry } = entryOf(draft({ weighed: kept.map((one) => ({ ...one, mass: '10' })) }), sheet);
  expect(entry.weighed.find(({ material }) => material === 'Ni')).toMatchObject({ purity: 98 });
  expect(entry.weighed.find(({ material }) => material === 'Co')).not.toHaveProperty('purity');
});
