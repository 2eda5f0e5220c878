import { readdirSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { CandidatePage, ElementUse, SearchView, TradeOff } from '@tiegel/contract';
import { afterAll, beforeAll, expect, onTestFinished, test } from 'vitest';
import { temporaryFolder } from '../../../test/fixtures/temporaryFolder.ts';
import { jsonOf, tiegel } from '../../../test/fixtures/tiegel.ts';

interface Systems {
  items: { system: string; kept: number; published: object | null; melts: number; best: { rank: number } }[];
  explored: { kept: number; keptExplored: number };
}

let folder: Awaited<ReturnType<typeof temporaryFolder>>;
let where: string[];
let id: string;
/** One with more points than are drawn. */
let large: string;
beforeAll(async () => {
  folder = await temporaryFolder('results');
  where = ['--database', join(folder.path, 'lab.sqlite')];
  const specification = {
    version: 1,
    name: 'Cobalt or not',
    elements: { pool: ['Al', 'Co', 'Cr', 'Fe', 'Ni', 'Ti'] },
    components: 5,
    fractions: { step: 5, min: 5, max: 35 },
    limits: [{ quantity: 'density', max: 7.6 }],
    rank: [{ quantity: 'sizeMismatch', prefer: 'low' }],
    keep: 300,
    keepPerSystem: 1,
  };
  await tiegel(['search', '-', ...where], { input: JSON.stringify(specification) });
  const all: SearchView[] = await jsonOf(['results', 'list', ...where]);
  id = all[0]!.id;
  const fine = { ...specification, name: 'Finer', fractions: { step: 2.5, min: 5, max: 35 }, keep: 10 };
  await tiegel(['search', '-', ...where], { input: JSON.stringify(fine) });
  large = (await jsonOf(['results', 'list', ...where])).find(({ name }: SearchView) => name === 'Finer').id;
});
afterAll(() => folder.remove());

test('searches are listed with what they kept', async () => {
  const { out } = await tiegel(['results', 'list', ...where]);
  expect(out).toMatch(new RegExp(`${id} .* done +30\\d  Cobalt or not`));
});

test('candidates are filtered and ordered as the page does', async () => {
  const asked = ['results', 'show', id, ...where, '--with', 'Al', '--max', 'density=7.5'];
  const page: CandidatePage = await jsonOf([...asked, '--order', 'density', '--rows', '7']);
  expect(page.items.length).toBeGreaterThan(0);
  const densities = page.items.map(({ quantities }) => quantities.density!);
  expect(densities).toEqual(densities.toSorted((a, b) => a - b));
  expect(densities.every((one) => one <= 7.5)).toBe(true);
  expect(page.items.every(({ composition }) => 'Al' in composition)).toBe(true);
  expect((await tiegel(asked)).out).toMatch(/composition +δ +ρ/);
  const none = await tiegel(['results', 'show', id, ...where, '--max', 'density=2']);
  expect(none.out).toContain('leave something out');
});

test('systems tell what is known of them; the unexplored are those of which nothing is', async () => {
  const all: Systems = await jsonOf(['results', 'systems', id, ...where]);
  expect(all.items[0]).toMatchObject({ best: { rank: 1 } });
  expect(all.items.length).toBe(all.explored.kept);
  const unexplored: Systems = await jsonOf(['results', 'systems', id, '--unexplored', ...where]);
  expect(unexplored.items.map(({ system }) => system)).toEqual(
    all.items.filter(({ published }) => published === null).map(({ system }) => system),
  );
  expect(unexplored.items.length).toBe(all.explored.kept - all.explored.keptExplored);
  expect((await tiegel(['results', 'systems', id, ...where])).out).toMatch(/does not prove that nobody/);
});

test('systems are written as a file with all of them, however many are shown', async () => {
  const into = join(folder.path, 'systems.csv');
  const words = ['results', 'systems', id, ...where];
  const all: Systems = await jsonOf([...words, '--rows', '1000']);
  const { out, code } = await tiegel([...words, '--format', 'csv', '--into', into]);
  expect({ out, code }).toEqual({ out: expect.stringMatching(/systems\.csv: [\d,]+ bytes\.\n$/), code: 0 });
  const lines = (await readFile(into, 'utf8')).split('\n').filter((line) => /^\d/.test(line));
  expect(lines.map((line) => line.split(',')[1])).toEqual(all.items.map(({ system }) => system));
  const again = await tiegel(['search', '--again', into]);
  expect(again).toMatchObject({ code: 1, error: expect.stringContaining('its rows are systems, not') });
  const piped = await tiegel([...words, '--unexplored', '--format', 'ndjson', '--into', '-']);
  const [head] = piped.out.split('\n');
  expect(JSON.parse(head!).export.selection).toMatchObject({ explored: 'no' });
  // The page of systems of the service says the same of how many there are.
  expect(all).toMatchObject({ among: { kept: expect.any(Number) }, meeting: expect.any(Number) });
});

test('elements are counted with the amounts that occur', async () => {
  const use: ElementUse = await jsonOf(['results', 'elements', id, ...where, '--without', 'Co']);
  const aluminium = use.elements.find(({ symbol }) => symbol === 'Al')!;
  // Without cobalt five of the five others are left, so that each is in every candidate.
  expect(aluminium.candidates).toBe(use.meeting);
  expect(use.elements.find(({ symbol }) => symbol === 'Co')).toMatchObject({ candidates: 0, amounts: [] });
  const { out } = await tiegel(['results', 'elements', id, ...where, '--without', 'Co']);
  const [{ atomicPercent, candidates } = { atomicPercent: 0, candidates: 0 }] = aluminium.amounts;
  expect(out).toMatch(
    new RegExp(`^Al +${use.meeting} +100\\.0 %  ${atomicPercent} \\(${candidates}\\)`, 'm'),
  );
  expect(out).toMatch(/^Co +0 +0\.0 %$/m);
});

test('distributions say whether they are a sample, of what size and how sure', async () => {
  const { out: all } = await tiegel(['results', 'distributions', id, ...where]);
  // C(6, 5) sets of five and their compositions in steps of 5 from 5 to 35: fewer than the sample.
  expect(all).toMatch(/^All [\d,]+ points of the grid; \d+\.\d\d % of them meet every limit\.$/m);
  expect(all).toMatch(/^sizeMismatch δ\n +from +to +grid +passing +kept$/m);
  expect(all).toMatch(/^density ρ$/m);
  const { out: drawn } = await tiegel([
    'results',
    'distributions',
    large,
    ...where,
    '--quantities',
    'density',
  ]);
  const text = drawn.replaceAll('\n', ' ');
  expect(text).toMatch(/A sample: 20,000 of the [\d,]+ points of the grid, drawn at random\./);
  expect(text).toMatch(/\d+\.\d\d % ± \d\.\d\d % of the points meet every limit/);
  // Wilson's interval at a half: 1.96 · 0.5 / √20000 = 0.7 percentage points.
  expect(text).toContain('known to ± 0.7 percentage points or better (95 %)');
  expect(Math.max(...drawn.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
});

test('the front goes from the best of one quantity to the best of the other', async () => {
  const asked = ['results', 'front', id, '--between', 'density=low,omega=high', ...where];
  const { items }: TradeOff = await jsonOf(asked);
  const [densities, omegas] = [0, 1].map((at) => items.map(({ values }) => values[at]!)) as [
    number[],
    number[],
  ];
  expect(items.length).toBeGreaterThan(1);
  expect(densities).toEqual(densities.toSorted((a, b) => a - b));
  expect(omegas).toEqual(omegas.toSorted((a, b) => a - b));
  const { out } = await tiegel(asked);
  expect(out).toMatch(/^ *rank +composition +ρ +Ω +alike$/m);
  expect(out.replaceAll('\n', ' ')).toContain('not of all that passed');
  expect((await tiegel([...asked, '--max', 'density=2'])).out).toContain('leave something out');
});

test('what is wrong names the option that it was written at, what was meant, and the next step here', async () => {
  const told = async (words: string[]) => (await tiegel(['results', ...words, ...where])).error;
  expect(await told(['show', id, '--max', 'densty=7'])).toMatch(
    /^--max: .* no quantity "densty": did you mean "density"\?\n {2}Use one of these: .*density/,
  );
  expect(await told(['show', id, '--order', 'foo'])).toMatch(/^--order: .* "foo"\.\n/);
  expect(await told(['show', id, '--front'])).toMatch(/^--front: .*\n.*"front" in the specification/);
  expect(await told(['distributions', id, '--quantities', 'densty'])).toMatch(/^--quantities: .*"density"\?/);
  expect(await told(['front', id, '--between', 'density=low,omga=high'])).toMatch(/^--between: .*"omega"\?/);
  expect(await told(['show', 'none'])).toContain('"results list"');
});

test.each([
  [['front', 'ID'], 'command/usage'],
  [['front', 'ID', '--between', 'density=low'], 'command/usage'],
  [['front', 'ID', '--between', 'density=least,omega=high'], 'command/usage'],
  [['front', 'ID', '--between', 'density=low,omga=high'], 'request/invalid'],
  [['distributions', 'ID', '--quantities', 'densty'], 'request/invalid'],
  [['systems', 'ID', '--format', 'csv'], 'command/usage'],
  [['systems', 'ID', '--format', 'csv', '--into', '-', '--rows', '3'], 'command/usage'],
  [['systems', 'ID', '--format', 'parquet', '--into', '-'], 'command/usage'],
  [['elements', 'none'], 'search/unknown'],
  [['show', 'none'], 'search/unknown'],
  [['show', 'ID', '--max', 'densty=7'], 'request/invalid'],
  [['show', 'ID', '--with', 'Xx'], 'element/unknown'],
  [['systems', 'ID', '--rows', '0'], 'command/usage'],
])('what is wrong is told with exit 1: %j', async (words, code) => {
  const given = words.map((word) => (word === 'ID' ? id : word));
  expect(await tiegel(['results', ...given, ...where])).toMatchObject({
    code: 1,
    error: expect.stringContaining(`[${code}]`),
  });
});

test('where the service has no database, looking for searches makes none, and says where it looked', async () => {
  const none = await temporaryFolder('no-database');
  onTestFinished(() => none.remove());
  const environment = { DATA_DIR: join(none.path, 'data') };
  const { code, error } = await tiegel(['results', 'show', 'none'], { environment });
  expect(code).toBe(1);
  expect(error).toContain(`no database yet at ${join(environment.DATA_DIR, 'tiegel.sqlite')}`);
  expect(error).toContain('[search/unknown]');
  const listed = await tiegel(['melt', 'list', '--json'], { environment });
  expect(listed).toMatchObject({ code: 0, out: '[]\n' });
  expect(readdirSync(none.path)).toEqual([]);
});
