import { join } from 'node:path';
import type { CandidatePage, SearchView } from '@tiegel/contract';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { temporaryFolder } from '../../../test/fixtures/temporaryFolder.ts';
import { jsonOf, tiegel } from '../../../test/fixtures/tiegel.ts';

interface Systems {
  items: { system: string; kept: number; published: object | null; melts: number; best: { rank: number } }[];
  explored: { kept: number; keptExplored: number };
}

let folder: Awaited<ReturnType<typeof temporaryFolder>>;
let where: string[];
let id: string;
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

test.each([
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
