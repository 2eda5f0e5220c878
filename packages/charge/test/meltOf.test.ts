import { type MeltEntry, ProblemError } from '@tiegel/contract';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  chargeNumber,
  chargeSheet,
  meltDoubts,
  meltOf,
  numberOfCharge,
  readMaterials,
} from '../src/index.ts';
import { outsideMasses, requests } from './fixtures/requests.ts';

const entry = (more: Partial<MeltEntry> = {}): MeltEntry => ({
  ...{ name: '', date: '2026-11-25', charge: null, ingot: null, process: 'arc melting', anneal: null },
  ...{ phases: null, methods: [], hardness: null, density: null, notes: '' },
  weighed: [{ material: 'Ni', mass: 10 }],
  ...more,
});
const faultsOf = (one: MeltEntry) => {
  try {
    meltOf(one, null);
  } catch (error) {
    if (error instanceof ProblemError) return error.faults.map(({ code, pointer }) => `${code} ${pointer}`);
    throw error;
  }
  return [];
};

test('a sheet that was weighed to the last step gives the composition that it promised', () => {
  fc.assert(
    fc.property(requests, (request) => {
      let sheet: ReturnType<typeof chargeSheet>;
      try {
        sheet = chargeSheet(request);
      } catch (error) {
        if (error instanceof ProblemError) return;
        throw error;
      }
      const weighed = sheet.lines.map(({ material, mass }) => ({ material, mass }));
      const melt = meltOf(entry({ weighed }), sheet);
      for (const [symbol, share] of Object.entries(sheet.resulting)) {
        expect(melt.composition[symbol]).toBeCloseTo(share, 9);
      }
      expect(melt.nominal).toEqual(sheet.composition);
    }),
    { numRuns: 100 },
  );
});

// An ü as one sign, and as a u with two dots to be put over it.
test('a name that is written in another normal form of Unicode is the one of the sheet', () => {
  const [one, two] = ['Mn geglüht'.normalize('NFC'), 'Mn geglüht'.normalize('NFD')];
  expect(one).not.toBe(two);
  const { materials } = readMaterials(`material,purity\n${two},90\nNi,\n`);
  const sheet = chargeSheet({
    ...{ composition: { Mn: 50, Ni: 50 }, mass: 50, resolution: 0.001, loss: {}, currency: null, materials },
  });
  for (const name of [one, two]) {
    const weighed = sheet.lines.map(({ material, mass }) => ({
      ...{ mass, material: material.startsWith('Mn') ? name : material },
    }));
    const melt = meltOf(entry({ weighed }), sheet);
    // Of a name that no sheet knows 100 % would be manganese.
    expect(melt.composition.Mn).toBeCloseTo(50, 2);
    expect(meltDoubts(entry({ weighed }), sheet, { melt, density: null })).toEqual([]);
  }
  expect(faultsOf(entry({ weighed: [one, two].map((material) => ({ material, mass: 1 })) }))).toEqual([
    'melt/weighed-twice /weighed/1/material',
  ]);
  expect(() => readMaterials(`material\n${one}\n${two}\n`)).toThrow(/Two materials/);
});

// By hand with the atomic masses of chemical-elements 2.3.3: 10 g of nickel of 99 %, 20 g of Fe34Nb66 (wt.%), a tenth of the iron lost.
test('materials of one’s own, a purity and a loss', () => {
  const { composition, system, nominal } = meltOf(
    entry({
      weighed: [
        { material: 'Ni shot', mass: 10, purity: 99 },
        { material: 'FeNb66', mass: 20, contains: 'Fe34Nb66', amounts: 'wt.%' },
      ],
      loss: { Fe: 10 },
    }),
    null,
  );
  const moles = {
    Ni: 9.9 / outsideMasses.get('Ni')!,
    Fe: (6.8 * 0.9) / outsideMasses.get('Fe')!,
    Nb: 13.2 / outsideMasses.get('Nb')!,
  };
  const sum = moles.Ni + moles.Fe + moles.Nb;
  for (const symbol of ['Ni', 'Fe', 'Nb'] as const) {
    expect(Math.abs(composition[symbol]! - (100 * moles[symbol]) / sum)).toBeLessThan(0.01);
  }
  expect({ system, nominal }).toEqual({ system: 'Fe-Nb-Ni', nominal: null });
});

/*
 * By hand: 10 g of nickel and 10 g of manganese. The sheet has Mn of 99 %, the lot on the balance had 90:
 * 9 g are manganese, 9/54.938 = 0.16382 of 0.16382 + 10/58.693 = 0.33420 mol, 49.02 at.%; of the sheet's 51.40.
 */
test('what the entry says of a material holds before what the sheet says', () => {
  const { materials } = readMaterials('material,purity\nMn,99\nNi,\n');
  const sheet = chargeSheet({
    ...{ composition: { Mn: 50, Ni: 50 }, mass: 20, resolution: 0.001, loss: {}, currency: null, materials },
  });
  const manganese = (more: object) => {
    const weighed = [
      { material: 'Ni', mass: 10 },
      { material: 'Mn', mass: 10, ...more },
    ];
    return meltOf(entry({ weighed }), sheet).composition;
  };
  expect(manganese({}).Mn).toBeCloseTo(51.4, 2);
  expect(manganese({ purity: null, contains: '' })).toEqual(manganese({}));
  expect(manganese({ purity: 90 }).Mn).toBeCloseTo(49.02, 2);
  expect(manganese({ contains: 'MnFe', amounts: 'at.%' }).Fe).toBeGreaterThan(20);
  // A purity that is left out is the sheet's, also where the contents are not.
  expect(manganese({ contains: 'Mn' }).Mn).toBeCloseTo(manganese({}).Mn!, 9);
  expect(() => manganese({ purity: 101 })).toThrow(/The purity of "Mn" is 101 %/);
});

test('phases are named in the order of the published labels', () => {
  const seen = entry({ phases: ['other', 'B2', 'BCC'], methods: ['light microscopy'] });
  expect(meltOf(seen, null).label).toBe('BCC+B2+other');
  expect(meltOf(entry(), null).label).toBeNull();
});

describe('what is wrong', () => {
  test.each([
    [{ phases: ['FCC', 'FCC'], methods: ['other'] }, 'melt/phase-twice /phases/1'],
    [{ phases: ['FCC'] }, 'melt/method-missing /methods'],
    [
      {
        weighed: [
          { material: 'Ni', mass: 1 },
          { material: ' Ni ', mass: 1 },
        ],
      },
      'melt/weighed-twice /weighed/1/material',
    ],
    [{ weighed: [{ material: 'Nickel', mass: 1 }] }, 'materials/name /weighed/0/name'],
    [{ weighed: [{ material: 'Ni', mass: 5e-324 }] }, 'request/wrong-value /weighed/0/mass'],
    [{ weighed: [{ material: 'Ni', mass: Number.NaN }] }, 'request/wrong-value /weighed/0/mass'],
    [{ loss: { Fe: 1 } }, 'charge/not-in-alloy /loss/Fe'],
    [{ loss: { Ni: 100 } }, 'request/wrong-value /loss/Ni'],
  ] as const)('%j', (more, expected) => {
    expect(faultsOf(entry(more as unknown as Partial<MeltEntry>))).toContain(expected);
  });
});

test('numbers of charge sheets are read as people write them', () => {
  expect(chargeNumber(7)).toBe('C-0007');
  expect(chargeNumber(12_345)).toBe('C-12345');
  expect(['C-0007', 'c7', ' 7 ', 'C0007'].map(numberOfCharge)).toEqual([7, 7, 7, 7]);
  expect(['', 'C-', '7a', '-7', '1234567890'].map(numberOfCharge)).toEqual([null, null, null, null, null]);
});
