import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { pairEnthalpy } from '@tiegel/elements';
import { afterAll, beforeAll, expect, onTestFinished, test } from 'vitest';
import { temporaryFolder } from '../../../test/fixtures/temporaryFolder.ts';
import { jsonOf, tiegel } from '../../../test/fixtures/tiegel.ts';

// All of it invented.
const brought = {
  prices: 'symbol,pricePerKilogram,currency,date,source\nMn,3,CHF,2026-10-05,invented\n',
  pairs: 'a,b,mixingEnthalpy,source\nAl,Ni,-30,invented\nFe,Mn,-40,invented\n',
  alloys: 'composition,name,phases,process,doi,note\nAlNi,trial 7,B2,cast,,invented\n',
  materials:
    'material,contains,amounts,purity,price,currency\nNiMn40,Mn40Ni60,wt.%,99.5,10,CHF\nFe rods,,,99.8,2,CHF\n',
};
const batch = ['--mass', '80', '--resolution', '0.001'];

let folder: Awaited<ReturnType<typeof temporaryFolder>>;
let where: string[];
beforeAll(async () => {
  folder = await temporaryFolder('in-force');
  where = ['--database', join(folder.path, 'tiegel.sqlite')];
  for (const [kind, input] of Object.entries(brought))
    await jsonOf(['data', 'import', kind, '-', ...where], { input });
});
afterAll(() => folder.remove());

/*
 * By hand, standard atomic weights of IUPAC (typed from memory) 55.845 (Fe), 54.938 (Mn) and 58.6934 (Ni),
 * for 100 mol of Fe50Mn25Ni25:
 *   needed        Fe 50 · 55.845 = 2792.25 g, Mn 25 · 54.938 = 1373.45 g, Ni 25 · 58.6934 = 1467.335 g
 *   master alloy  pure nickel has no price in the list in force, so NiMn40 brings it:
 *                 1467.335 / 0.6 = 2445.558 g of metal, weighed 2445.558 / 0.995 = 2457.848 g;
 *                 it brings 0.4 · 2445.558 = 978.223 g of Mn
 *   manganese     1373.45 − 978.223 = 395.227 g, pure: nothing that was brought in is manganese alone
 *   iron          2792.25 / 0.998 = 2797.846 g of rods
 *   in all        5650.920 g; of 80 g: 39.609 g of rods, 34.796 g of NiMn40 and 5.595 g of Mn
 *   cost          39.609 · 0.002 + 34.796 · 0.01 + 5.595 · 0.003 = 0.443963 CHF
 */
test('raw materials in force are charged, as calculated by hand', async () => {
  const sheet = await jsonOf(['charge', 'Fe50Mn25Ni25', ...batch, '--in-force', ...where]);
  const masses = sheet.lines.map(({ material, mass }: { material: string; mass: number }) => [
    material,
    mass,
  ]);
  expect(Object.fromEntries(masses)).toEqual({ 'Fe rods': 39.609, NiMn40: 34.796, Mn: 5.595 });
  expect(sheet.currency).toBe('CHF');
  expect(sheet.cost).toBeCloseTo(0.443963, 9);
  // At 0.001 g in 5.6 g no share is off by more than some 0.005 at.%.
  // Where none is named, it is the database of the service.
  const environment = { DATA_DIR: folder.path };
  expect(await jsonOf(['charge', 'Fe50Mn25Ni25', ...batch, '--in-force'], { environment })).toEqual(sheet);
  for (const [symbol, share] of Object.entries({ Fe: 50, Mn: 25, Ni: 25 }))
    expect(Math.abs(sheet.resulting[symbol] - share)).toBeLessThan(0.005);
});

test('cautions of a charge and the data version of its sheet know the pair values in force', async () => {
  const charge = ['charge', 'Fe50Mn25Ni25', ...batch];
  const mixing = ({ cautions }: { cautions: { kind: string; text: string }[] }) =>
    cautions.find(({ kind }) => kind === 'heat of mixing')?.text;
  expect(mixing(await jsonOf(charge))).toBeUndefined();
  const kept = await jsonOf([...charge, '--in-force', '--save', 'trial', ...where]);
  expect(mixing(kept)).toContain('Fe–Mn −40');
  const { current } = await jsonOf(['data', 'versions', ...where]);
  expect(kept).toMatchObject({
    ...{ number: 'C-0001', dataVersion: current, request: { materials: 'in force' } },
    prices: { currency: 'CHF', invented: false },
  });
});

test('a list of materials in a file goes before those in force; a purity beside these is refused', async () => {
  const input = 'material,contains,amounts,purity\nFe,,,100\nMn,,,100\nNi,,,100\n';
  const charge = ['charge', 'Fe50Mn25Ni25', ...batch, '--in-force', ...where];
  const { lines } = await jsonOf([...charge, '--materials', '-'], { input });
  expect(lines.map(({ material }: { material: string }) => material)).toEqual(['Fe', 'Mn', 'Ni']);
  expect((await tiegel([...charge, '--purity', 'Mn=99'])).error).toContain('[charge/two-purities]');
  expect((await tiegel([...charge, '--prices', '-'], { input: brought.prices })).error).toMatch(
    /--in-force.*--prices.*\[command\/usage\]/s,
  );
});

// An equimolar binary alloy has the enthalpy of its pair: 4 H c(1 − c) with c = 1/2.
test('pair values in force hold in screen, explain, weighing and substitute', async () => {
  const enthalpies = async (more: string[], options = {}) => {
    const [screened] = await jsonOf(['screen', 'AlNi', ...more], options);
    const told = await jsonOf(['explain', 'AlNi', ...more], options);
    const weighed = await jsonOf(['weighing', 'AlNi', ...batch, ...more], options);
    const only = ['--replace', 'Co', '--with', 'Ni', ...more];
    const { items } = await jsonOf(['substitute', 'AlCo', ...only], options);
    const whole = items.find(({ by }: { by: Record<string, number> }) => by.Ni === 50);
    return [
      screened,
      told,
      { quantities: { mixingEnthalpy: weighed.quantities.mixingEnthalpy.value } },
      whole,
    ].map(({ quantities }) => quantities.mixingEnthalpy as number);
  };
  const close = (value: number) => Array(4).fill(expect.closeTo(value, 9));
  expect(await enthalpies([])).toEqual(close(pairEnthalpy('Al', 'Ni')!));
  expect(await enthalpies(where)).toEqual(close(-30));
  // A file of the command goes before the database.
  const input = 'a,b,mixingEnthalpy\nNi,Al,-10\n';
  expect(await enthalpies([...where, '--pairs', '-'], { input })).toEqual(close(-10));
});

// Takeuchi & Inoue, Mater. Trans. 46 (2005) 2817: Al–Ni −22 kJ/mol.
test('explain names the import of a pair value in force, and a file of the command before it', async () => {
  const sourcesOf = async (more: string[], options = {}) => {
    const { paragraphs } = await jsonOf(['explain', 'AlNi', ...more], options);
    return paragraphs
      .filter(({ subject }: { subject: string }) => ['demixing', 'ordering', 'pairs'].includes(subject))
      .map(({ sources }: { sources: string[] }) => sources.find((one) => one.startsWith('Al–Ni')));
  };
  expect(await sourcesOf([])).toEqual([undefined, undefined, undefined]);
  const day = new Date().toISOString().slice(0, 10);
  const from = new RegExp(`^Al–Ni −30 kJ/mol: own value of ${day}, import 2: invented; published: −22$`);
  expect(await sourcesOf(where)).toEqual(Array(3).fill(expect.stringMatching(from)));
  const input = 'a,b,mixingEnthalpy\nNi,Al,-10\n';
  expect(await sourcesOf([...where, '--pairs', '-'], { input })).toEqual(
    Array(3).fill('Al–Ni −10 kJ/mol: own value of the file on standard input; published: −22'),
  );
});

test('prices in force hold, a file of the command before them', async () => {
  const cost = async (more: string[], options = {}) =>
    (await jsonOf(['screen', 'Mn', ...more, ...where], options))[0].quantities.cost;
  expect(await cost([])).toBeCloseTo(3, 12);
  const input = 'symbol,pricePerKilogram,currency,date,source\nMn,5,EUR,2026-10-05,invented\n';
  expect(await cost(['--prices', '-'], { input })).toBeCloseTo(5, 12);
});

test('columns in force hold in screen, a file of the command before one of the same name', async () => {
  const column = (nickel: number) =>
    `symbol,value,name,unit,mixing\nFe,52,Trial hardness,HV,mole\nNi,${nickel},,,\n`; // invented
  const mine = await temporaryFolder('columns');
  onTestFinished(() => mine.remove());
  const there = ['--database', join(mine.path, 'tiegel.sqlite')];
  await jsonOf(['data', 'import', 'column', '-', ...there], { input: column(64) });
  const screened = async (more: string[], options = {}) =>
    (await jsonOf(['screen', 'FeNi', ...more], options))[0].quantities.trialHardness;
  expect(await screened([])).toBeUndefined();
  expect(await screened(there)).toBeCloseTo(58, 12);
  const input = column(70);
  expect(await screened([...there, '--column', '-'], { input })).toBeCloseTo(61, 12);
  expect((await tiegel(['screen', 'FeNi', ...there])).out).toMatch(/^Trial hardness +HV +58/m);
});

test('alloys that were brought in are among the neighbours, marked as own, and in the words', async () => {
  const mine = { formula: 'trial 7', own: true, import: 3, distance: 0, phases: 'B2' };
  const [screened] = await jsonOf(['screen', 'AlNi', ...where]);
  const told = await jsonOf(['explain', 'AlNi', ...where]);
  for (const { nearest } of [screened, told]) {
    expect(nearest[0]).toMatchObject(mine);
    expect(nearest[1]).toMatchObject({ own: false, import: null });
  }
  const { out } = await tiegel(['explain', 'AlNi', ...where]);
  expect(out).toMatch(/^Alloys of your own nearby\n {2}trial 7 \(own, import 3\).*: B2\.$/m);
  for (const command of [['screen'], ['explain']]) {
    const without = [await jsonOf([...command, 'AlNi'])].flat()[0];
    expect(without.nearest.every((one: object) => !('own' in one))).toBe(true);
  }
});

test('a database that is not there is named, and none is made', async () => {
  const absent = join(folder.path, 'absent.sqlite');
  const commands = [
    ...[['screen', 'AlNi'], ['explain', 'AlNi'], ['evidence'], ['weighing', 'AlNi', ...batch]],
    ...[
      ['substitute', 'AlNi', '--replace', 'Ni'],
      ['charge', 'AlNi', ...batch, '--in-force'],
    ],
  ];
  for (const words of commands) {
    const ran = await tiegel([...words, '--database', absent]);
    expect(ran).toMatchObject({ code: 1, out: '' });
    expect(ran.error).toMatch(/absent\.sqlite.*there is no such file.*\[file\/unreadable\]/s);
  }
  expect(existsSync(absent)).toBe(false);
});
