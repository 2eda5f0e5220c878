import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { temporaryFolder } from '../../../test/fixtures/temporaryFolder.ts';
import { jsonOf, tiegel } from '../../../test/fixtures/tiegel.ts';

async function freshDatabase(): Promise<string[]> {
  const folder = await temporaryFolder('melt');
  onTestFinished(() => folder.remove());
  return ['--database', join(folder.path, 'lab.sqlite')];
}

const entry = (more = {}) =>
  JSON.stringify({
    ...{ name: 'First trial', date: '2026-11-25', charge: null, ingot: null, process: 'arc melting' },
    ...{
      anneal: null,
      phases: ['FCC'],
      methods: ['X-ray diffraction'],
      hardness: 150,
      density: null,
      notes: '',
    },
    weighed: [
      { material: 'Fe', mass: 10 },
      { material: 'Ni', mass: 10 },
    ],
    ...more,
  });

test('a charge sheet is kept, and the melt that refers to it has its materials', async () => {
  const where = await freshDatabase();
  const sheet = await jsonOf([
    'charge',
    'CoCrFeMnNi',
    '--mass',
    '50',
    '--resolution',
    '0.001',
    '--purity',
    'Mn=99.7',
    '--loss',
    'Mn=1.5',
    '--save',
    'First',
    ...where,
  ]);
  expect(sheet).toMatchObject({ number: 'C-0001', name: 'First', total: 49.999 });
  const weighed = sheet.lines.map(({ material, mass }: { material: string; mass: number }) => ({
    material,
    mass,
  }));
  const melt = await jsonOf(['melt', 'record', '-', ...where], { input: entry({ charge: 'c1', weighed }) });
  expect(melt).toMatchObject({ charge: 'C-0001', label: 'FCC', phaseClass: 'fcc', nominal: { Mn: 20 } });
  for (const share of Object.values<number>(melt.composition))
    expect(Math.abs(share - 20)).toBeLessThan(0.002);
});

test('what is probably a slip is told on standard error, and the melt is recorded all the same', async () => {
  const where = await freshDatabase();
  const charged = ['charge', 'FeNi', '--mass', '50', '--resolution', '0.001', '--save', 'Two', ...where];
  const { lines } = await jsonOf(charged);
  const weighed = lines.map(({ material, mass }: { material: string; mass: number }) => ({ material, mass }));
  const sound = { charge: 'C-0001', weighed, ingot: 49.5, density: 8.3 };
  const fine = await tiegel(['melt', 'record', '-', ...where, '--json'], { input: entry(sound) });
  expect(fine).toMatchObject({ code: 0, error: '' });
  expect(JSON.parse(fine.out).doubts).toEqual([]);

  const slips = {
    ...sound,
    weighed: [
      { ...weighed[0], mass: weighed[0].mass * 100 },
      { material: 'Zr', mass: 9999 },
    ],
    density: 1.5,
  };
  const odd = await tiegel(['melt', 'record', '-', ...where, '--json'], { input: entry(slips) });
  expect(odd.code).toBe(0);
  for (const told of [
    /^Doubtful, \/weighed\/0\/mass: Fe: 24\d\d.* the charge sheet says 24\./m,
    /^Doubtful, \/weighed\/1\/material: Zr is not on the charge sheet/m,
    /^Doubtful, \/weighed: On the charge sheet, and not weighed: Ni/m,
    /^Doubtful, \/ingot: The ingot is 100 % lighter/m,
    /^Doubtful, \/density: A density of 1\.5 g/m,
  ])
    expect(odd.error).toMatch(told);
  const { id, doubts } = JSON.parse(odd.out);
  expect(doubts.map(({ pointer }: { pointer: string }) => pointer)).toEqual([
    ...['/weighed/0/mass', '/weighed/1/material', '/weighed', '/ingot', '/density'],
  ]);
  const mended = await tiegel(['melt', 'change', id, '-', ...where], { input: entry(sound) });
  expect(mended).toMatchObject({ code: 0, error: '' });
});

test('a melt is listed, shown, changed, deleted and brought back', async () => {
  const where = await freshDatabase();
  const { id } = await jsonOf(['melt', 'record', '-', ...where], { input: entry() });
  const changed = await jsonOf(['melt', 'change', id, '-', ...where], { input: entry({ hardness: 160 }) });
  expect(changed).toMatchObject({ id, version: 2, hardness: 160 });
  const { history } = await jsonOf(['melt', 'show', id, ...where]);
  expect(history).toHaveLength(2);
  const { out } = await tiegel(['melt', 'show', id, ...where]);
  // By hand: 10/55.845 and 10/58.693 mol are 51.24 and 48.76 at.%.
  expect(out).toMatch(/Fe51\.24 Ni48\.76 at\.%, as weighed/);
  expect(out).toContain('phases: FCC by X-ray diffraction');
  expect(out).toMatch(/^version 2, .*: hardness 150 → 160\nversion 1, .*: recorded$/m);
  expect((await tiegel(['melt', 'list', ...where])).out).toContain(id);
  await jsonOf(['melt', 'delete', id, ...where]);
  expect(await jsonOf(['melt', 'list', ...where])).toEqual([]);
  await jsonOf(['melt', 'restore', id, ...where]);
  expect(await jsonOf(['melt', 'list', ...where])).toHaveLength(1);
});

test('a change says what version it was made from, and is refused where somebody changed the melt since', async () => {
  const where = await freshDatabase();
  const { id } = await jsonOf(['melt', 'record', '-', ...where], { input: entry() });
  const shown = await jsonOf(['melt', 'show', id, ...where]);
  const mine = JSON.stringify({ ...shown, hardness: 170 });
  // As it was shown, with all that follows from it.
  expect(await jsonOf(['melt', 'change', id, '-', ...where], { input: mine })).toMatchObject({
    ...{ version: 2, hardness: 170, createdAt: shown.createdAt },
  });
  const later = await tiegel(['melt', 'change', id, '-', ...where], { input: mine });
  expect(later).toMatchObject({ code: 1, out: '' });
  expect(later.error).toMatch(/version 1, the newest is 2.*\[melt\/changed-meanwhile\]/s);
  const another = await tiegel(['melt', 'change', 'another', '-', ...where], { input: mine });
  expect(another.error).toContain('Give the file of the melt another.');
});

test('what a melt that is recorded leaves out is null or empty; a change states all of it', async () => {
  const where = await freshDatabase();
  const input = JSON.stringify({
    ...{ date: '2026-11-25', process: 'arc melting', weighed: [{ material: 'Fe', mass: 10 }] },
  });
  const melt = await jsonOf(['melt', 'record', '-', ...where], { input });
  expect(melt).toMatchObject({
    ...{ name: '', charge: null, ingot: null, anneal: null, phases: null, methods: [] },
    ...{ hardness: null, density: null, notes: '' },
  });
  const { error } = await tiegel(['melt', 'change', melt.id, '-', ...where], { input });
  expect(error).toMatch(/anneal is missing\..*Write an anneal, such as \{"temperature": 1473/s);
});

test('the examples are charged from and recorded as they stand', async () => {
  const where = await freshDatabase();
  const examples = join(import.meta.dirname, '../examples');
  const batch = ['--mass', '50', '--resolution', '0.001', '--loss', 'Mn=1.5'];
  const shelf = ['--materials', join(examples, 'shelf.csv')];
  const sheet = await jsonOf(['charge', 'CoCrFeMnNi', ...batch, ...shelf, '--save', 'First trial', ...where]);
  const melt = await jsonOf(['melt', 'record', join(examples, 'melt.json'), ...where]);
  const materials = (of: { material: string }[]) => of.map(({ material }) => material);
  expect(melt.charge).toBe(sheet.number);
  expect(materials(melt.weighed).sort()).toEqual(materials(sheet.lines).sort());
  for (const share of Object.values<number>(melt.composition)) expect(share).toBeCloseTo(20, 1);
});

test('melts stand beside the published alloys in the evidence of their database', async () => {
  const where = await freshDatabase();
  // Makes the database: who only reads makes none.
  await jsonOf(['shortlist', 'begin', 'Nothing yet', ...where]);
  expect(await jsonOf(['melt', 'list', ...where])).toEqual([]);
  expect((await jsonOf(['evidence', ...where])).own).toBeNull();
  await jsonOf(['melt', 'record', '-', ...where], { input: entry() });
  expect((await jsonOf(['evidence', ...where])).own).toMatchObject({ melts: 1, systems: 1 });
  const { out } = await tiegel(['evidence', ...where]);
  expect(out).toMatch(/Your own melts/);
  expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
});

test('what is wrong is told with its place, and nothing is recorded', async () => {
  const where = await freshDatabase();
  const wrong = [
    [entry({ hardnes: 1 }), 'request/unknown-key'],
    [entry({ charge: 'C-0009' }), 'charge/not-found'],
    [entry({ methods: [] }), 'melt/method-missing'],
    ['{', 'file/malformed-json'],
  ] as const;
  for (const [input, code] of wrong) {
    const ran = await tiegel(['melt', 'record', '-', ...where], { input });
    expect(ran).toMatchObject({ code: 1, out: '' });
    expect(ran.error).toContain(`[${code}]`);
  }
  expect((await tiegel(['melt', 'show', 'nobody', ...where])).error).toContain('[melt/not-found]');
  expect(await jsonOf(['melt', 'list', ...where])).toEqual([]);
});

test('what a recalibration on own melts lacks stands in the evidence and the explanation of their database', async () => {
  const where = await freshDatabase();
  const lacks = /still\s+missing\s+20\s+melts,\s+5\s+systems/;
  // Makes the database: who only reads makes none.
  await jsonOf(['shortlist', 'begin', 'Nothing yet', ...where]);
  expect(await jsonOf(['melt', 'list', ...where])).toEqual([]);
  expect((await tiegel(['evidence', ...where])).out).toMatch(lacks);
  const { out } = await tiegel(['explain', 'AlCoCrFeNi', ...where]);
  expect(out).toMatch(/^Phases, by your own melts$/m);
  expect(out).toMatch(lacks);
  expect((await tiegel(['explain', 'AlCoCrFeNi'])).out).not.toMatch(/own melts/);
  const told = await jsonOf(['explain', 'AlCoCrFeNi', ...where]);
  expect(told.own).toMatchObject({ singleSolution: null, recalibration: { kind: 'none', fit: null } });
});

// By hand: 10 g each of Fe (55.845) and Ni (58.6934) are 51.24 and 48.76 at.%.
test('a melt stands among the neighbours of explain and screen, as weighed and marked as own', async () => {
  const where = await freshDatabase();
  const { id } = await jsonOf(['melt', 'record', '-', ...where], { input: entry() });
  const [screened] = await jsonOf(['screen', 'Fe51Ni49', ...where]);
  const told = await jsonOf(['explain', 'Fe51Ni49', ...where]);
  for (const { nearest } of [screened, told])
    expect(nearest[0]).toMatchObject({
      ...{ formula: 'First trial', own: true, melt: id, phases: 'FCC', methods: ['X-ray diffraction'] },
      composition: { Fe: expect.closeTo(51.24, 2), Ni: expect.closeTo(48.76, 2) },
    });
  const { out } = await tiegel(['explain', 'Fe51Ni49', ...where]);
  expect(out.replaceAll(/\s+/g, ' ')).toContain(
    'First trial (own melt, as weighed Fe 51.2, Ni 48.8 at.%), less than 1 % of the atoms apart: FCC, observed by X-ray diffraction.',
  );
});

test('a database whose name is mistyped is not made by who looks for melts or imports in it', async () => {
  const where = await freshDatabase();
  const looking = [
    ...[
      ['melt', 'list'],
      ['melt', 'show', 'one'],
      ['melt', 'delete', 'one'],
      ['melt', 'restore', 'one'],
    ],
    ...[
      ['data', 'imports'],
      ['data', 'versions'],
      ['data', 'alloys'],
      ['data', 'withdraw', '1'],
    ],
  ];
  for (const words of looking) {
    const { code, out, error } = await tiegel([...words, ...where]);
    expect({ code, out }, words.join(' ')).toEqual({ code: 1, out: '' });
    expect(error).toContain('[file/unreadable]');
  }
  expect(existsSync(where[1]!)).toBe(false);
});
