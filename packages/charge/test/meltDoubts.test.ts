import type { MeltEntry } from '@tiegel/contract';
import { parseAlloy } from '@tiegel/elements';
import { expect, test } from 'vitest';
import { chargeSheet, meltDoubts, meltOf, pureMaterials } from '../src/index.ts';

const composition = parseAlloy('CoCrFeMnNi');
const sheet = chargeSheet({
  ...{ composition, mass: 50, resolution: 0.001, loss: { Mn: 1.5 }, pairs: [] },
  ...pureMaterials(Object.keys(composition), null),
});
const asOnSheet = sheet.lines.map(({ material, mass }) => ({ material, mass }));
const entry = (more: Partial<MeltEntry> = {}): MeltEntry => ({
  ...{ name: '', date: '2026-11-25', charge: 'C-0001', ingot: null, process: 'arc melting', anneal: null },
  ...{ phases: null, methods: [], hardness: null, density: null, notes: '' },
  weighed: asOnSheet,
  ...more,
});
/** With a computed density of 7.9 g/cm3. */
const doubtsOf = (one: MeltEntry, on: typeof sheet | null = sheet) =>
  meltDoubts(one, on, { melt: meltOf(one, on), density: 7.9 });
const chromium = asOnSheet.findIndex(({ material }) => material === 'Cr');
const withChromium = (mass: number) =>
  entry({ weighed: asOnSheet.map((one, at) => (at === chromium ? { ...one, mass } : one)) });

test('a melt as the sheet has it leaves no doubt', () => {
  expect(doubtsOf(entry({ ingot: 49.6, density: 7.95 }))).toEqual([]);
  expect(doubtsOf(entry())).toEqual([]);
});

test('a mass is doubted more than 5 % off the sheet, with both masses', () => {
  const { mass } = asOnSheet[chromium]!;
  expect(doubtsOf(withChromium(mass * 1.049))).toEqual([]);
  expect(doubtsOf(withChromium(mass * 0.951))).toEqual([]);
  for (const slip of [mass * 100, mass / 10, mass * 1.051])
    expect(doubtsOf(withChromium(slip))).toEqual([
      {
        pointer: `/weighed/${chromium}/mass`,
        text: `Cr: ${slip} g were weighed, and the charge sheet says ${mass} g: see the mass.`,
      },
    ]);
});

test('one step of the balance is no slip, however little is weighed', () => {
  const coarse = { ...sheet, resolution: 1 };
  expect(doubtsOf(withChromium(asOnSheet[chromium]!.mass + 1), coarse)).toEqual([]);
  expect(doubtsOf(withChromium(asOnSheet[chromium]!.mass + 2), coarse)).toHaveLength(1);
});

test('a material that is not on the sheet is doubted, and one of the sheet that was not weighed', () => {
  const weighed = [...asOnSheet.filter((_, at) => at !== chromium), { material: 'Zr', mass: 9999 }];
  expect(doubtsOf(entry({ weighed }))).toEqual([
    { pointer: '/weighed/4/material', text: expect.stringMatching(/^Zr is not on the charge sheet/) },
    { pointer: '/weighed', text: expect.stringMatching(/^On the charge sheet, and not weighed: Cr\./) },
  ]);
  expect(doubtsOf(entry({ weighed }), null)).toEqual([]);
});

test('what the sheet says of a material and a row says otherwise is doubted', () => {
  const withRow = (more: object) =>
    entry({ weighed: asOnSheet.map((one, at) => (at === chromium ? { ...one, ...more } : one)) });
  expect(doubtsOf(withRow({ purity: 60 }))).toEqual([
    {
      pointer: `/weighed/${chromium}/purity`,
      text: expect.stringMatching(
        /^Cr: a purity of 60 wt\.% was written, and the charge sheet says 100 wt\.%/,
      ),
    },
  ]);
  for (const contains of ['Cr90Fe10', { Cr: 90, Fe: 10 }])
    expect(doubtsOf(withRow({ contains, amounts: 'wt.%' })).map(({ pointer }) => pointer)).toEqual([
      `/weighed/${chromium}/contains`,
    ]);
  for (const same of [{ purity: 100 }, { contains: 'Cr', purity: null }, { contains: '', amounts: 'at.%' }])
    expect(doubtsOf(withRow(same))).toEqual([]);
});

// By hand: of 50 g about 9.4 g are manganese, of which 1.5 % evaporate: 49.86 g are left, and nine tenths of it are 44.87 g.
test('an ingot is doubted above all that was charged, and more than 10 % below what the losses leave', () => {
  const of = (ingot: number) => doubtsOf(entry({ ingot })).map(({ pointer, text }) => `${pointer} ${text}`);
  expect(of(70)).toEqual([expect.stringMatching(/^\/ingot The ingot weighs more than the (50\.00|49\.99)/)]);
  // 1 % above the 50 g is what balances differ by; 2 % is not.
  expect(of(50.4)).toEqual([]);
  expect(of(50.9)).toHaveLength(1);
  expect(of(44.9)).toEqual([]);
  expect(of(44.8)).toEqual([expect.stringMatching(/^\/ingot The ingot is 10 % lighter than the 49\.8/)]);
  expect(doubtsOf(entry({ ingot: 9, weighed: [{ material: 'Ni', mass: 100 }] }), null)).toEqual([
    { pointer: '/ingot', text: expect.stringMatching(/^The ingot is 91 % lighter than the 100\.000 g/) },
  ]);
});

test('what is expected to evaporate is no missing mass', () => {
  const weighed = [
    { material: 'Mn', mass: 50 },
    { material: 'Fe', mass: 50 },
  ];
  expect(doubtsOf(entry({ weighed, ingot: 85 }), null)).toHaveLength(1);
  expect(doubtsOf(entry({ weighed, ingot: 85, loss: { Mn: 20 } }), null)).toEqual([]);
});

test('a measured density is doubted more than 10 % off the computed one, and not where none is computed', () => {
  const of = (density: number) => doubtsOf(entry({ density }));
  expect([of(7.2), of(8.6)]).toEqual([[], []]);
  expect(of(1.5)).toEqual([
    {
      pointer: '/density',
      text: 'A density of 1.5 g/cm³ is far from the 7.90 g/cm³ that is computed of the masses: see both.',
    },
  ]);
  expect(of(8.8)).toHaveLength(1);
  const melt = meltOf(entry(), sheet);
  expect(meltDoubts(entry({ density: 1.5 }), sheet, { melt, density: null })).toEqual([]);
});

test('a form that is half filled in is doubted only where something stands', () => {
  const weighed = [{ material: 'Cr', mass: Number.NaN }, ...asOnSheet.filter((_, at) => at !== chromium)];
  expect(meltDoubts(entry({ weighed, ingot: -3 }), sheet, { melt: null, density: null })).toEqual([]);
});
