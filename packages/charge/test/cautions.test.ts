import { parseAlloy } from '@tiegel/elements';
import { describe, expect, test } from 'vitest';
import { chargeSheet, pureMaterials } from '../src/index.ts';
import { vapourPressure } from '../src/vapourPressure.ts';

function cautionsOf(alloy: string, loss: Record<string, number> = {}) {
  const composition = parseAlloy(alloy);
  return chargeSheet({
    ...{ composition, mass: 50, resolution: 0.001, loss },
    ...pureMaterials(Object.keys(composition), null),
  }).cautions;
}
const of = (alloy: string, kind: string) => cautionsOf(alloy).filter((one) => one.kind === kind);

/*
 * Temperatures (K) at which the vapour pressure is 100 Pa and 10 kPa, as tabulated in handbooks (CRC);
 * typed from memory: weak evidence, enough for an estimate that claims from about a third to three times as much.
 */
describe('the estimate of the vapour pressure', () => {
  test.each([
    ['Mn', 1493, 100],
    ['Mn', 1955, 10_000],
    ['Zn', 750, 100],
    ['Mg', 861, 100],
    ['Al', 1817, 100],
    ['Cr', 1991, 100],
    ['Cu', 1850, 100],
    ['Ag', 1575, 100],
  ])('of %s at %d K is near %d Pa', (symbol, temperature, tabulated) => {
    const ratio = vapourPressure(symbol, temperature)! / tabulated;
    expect(ratio).toBeGreaterThan(1 / 3.5);
    expect(ratio).toBeLessThan(3.5);
  });

  test('is one atmosphere where the element boils', () => {
    expect(vapourPressure('Mn', 2334)).toBeCloseTo(101_325, 6);
  });
});

test('manganese evaporates before chromium melts, with what is made up for', () => {
  const [caution] = of('CoCrFeMnNi', 'evaporates');
  expect(caution!.about).toEqual(['Mn']);
  expect(caution!.text).toContain('tables give between about a third and three times as much');
  expect(caution!.text).toMatch(/where Cr melts \(2180 K\).*Mn 40 kPa\. No loss of Mn is made up for here/);
  const [madeUpFor] = cautionsOf('CoCrFeMnNi', { Mn: 1.5 }).filter(({ kind }) => kind === 'evaporates');
  expect(madeUpFor!.text).toContain('Made up for here: 1.5 % of Mn.');
});

// Of pure aluminium some 3 kPa at 2180 K, of titanium at the melting point of niobium as much: tables from memory.
test('what loses mass visibly from about 2 kPa on is named, what has less is not', () => {
  const evaporating = (alloy: string) => of(alloy, 'evaporates').flatMap(({ about }) => about);
  expect(evaporating('AlCr')).toEqual(['Al']);
  expect(evaporating('NbTi')).toEqual(['Ti']);
  expect(evaporating('CoCrFeNi')).toEqual([]);
});

test('manganese loses mass at its melt, whatever else is in the alloy', () => {
  expect(
    of('CuMn', 'volatile when molten')
      .map(({ text }) => text)
      .join(' '),
  ).toContain('Loses mass at its melt');
});

// Zinc boils at 1180 K, iron melts at 1811 K.
test('an element that boils before another melts is named', () => {
  expect(of('FeZn', 'boils before all is molten')[0]!.about).toEqual(['Zn', 'Fe']);
  expect(of('FeNi', 'boils before all is molten')).toEqual([]);
});

test('nothing that boils is to be closed in: the pressure is said', () => {
  const [caution] = of('MgNbTi', 'boils before all is molten');
  expect(caution!.text).toMatch(/Never melt it in a closed crucible.*some 400 atmospheres\)/);
});

test('what is fatal if inhaled comes first, what burns after what causes cancer', () => {
  expect(cautionsOf('Cd50Ni50')[0]!.about).toEqual(['Cd']);
  const [first, ...others] = cautionsOf('Be20Ti80');
  expect(first!.about).toEqual(['Be']);
  expect(first!.text).toContain('H330');
  const powder = others.find(({ kind }) => kind === 'powder')!;
  expect(powder.about).toEqual(['Be', 'Ti']);
  expect(powder.text).toContain('dust of Be harms whoever breathes it');
  expect(powder.text).toContain('grinding dust Ti can burn');
});

// Takeuchi & Inoue: Al–Ni −22, Al–Ti −30 kJ/mol; Co–Ni 0.
test('violent mixing is named with its pairs, a trace is not', () => {
  expect(of('AlNiTi', 'heat of mixing')[0]!.text).toMatch(/Ni–Ti −35.*Al–Ti −30.*Al–Ni −22/);
  expect(of('AlNiTi', 'heat of mixing')[0]!.about).toEqual(['Al', 'Ni', 'Ti']);
  expect(of('CoNi', 'heat of mixing')).toEqual([]);
  expect(of('Al4.9Ni95.1', 'heat of mixing')).toEqual([]);
  expect(of('Al5Ni95', 'heat of mixing')).toHaveLength(1);
});

test('every hazard on record is told but the powders, which are told together', () => {
  const kinds = cautionsOf('BeCoTi').map(({ kind, about }) => `${about.join()} ${kind}`);
  expect(kinds).toEqual(
    expect.arrayContaining([
      'Be carcinogenic dust or fume',
      'Co carcinogenic dust or fume',
      'Ti pyrophoric powder',
    ]),
  );
  expect(of('CoTi', 'powder')[0]!.about).toEqual(['Co', 'Ti']);
});

test('each caution defers to data sheets, local codes and licensed practice', () => {
  for (const { follow } of cautionsOf('AlCoCrFeMnNi')) {
    expect(follow).toMatch(/safety data sheet.*local codes.*licensed/);
  }
});

// Invented: the project has −2 kJ/mol for Fe–Ni and −22 for Al–Ni.
test('the heat of mixing is that of one’s own pair value where there is one', () => {
  const composition = parseAlloy('AlFeNi');
  const own = (a: string, b: string, mixingEnthalpy: number) => ({
    a,
    b,
    mixingEnthalpy,
    source: 'invented',
    ...{ import: 3, importName: 'trials', importedAt: '2026-11-29T08:15:00.000Z' },
  });
  const pairs = [own('Al', 'Ni', -5), own('Fe', 'Ni', -31)];
  const asked = { composition, mass: 50, resolution: 0.001, ...pureMaterials(['Al', 'Fe', 'Ni'], null) };
  const mixing = (more: object) =>
    chargeSheet({ ...asked, ...more }).cautions.find(({ kind }) => kind === 'heat of mixing');
  expect(mixing({})!.about).toEqual(['Al', 'Ni']);
  const caution = mixing({ pairs })!;
  expect(caution.about).toEqual(['Fe', 'Ni']);
  expect(caution.text).toContain('Fe–Ni −31 (own value of 2026-11-29, import 3 (trials): invented)');
});
