import { execFileSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { exportFormats, type SearchView } from '@tiegel/contract';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { freePort } from '../fixtures/freePort.ts';
import { type RunningApi, startApi } from '../fixtures/processes.ts';
import { temporaryFolder } from '../fixtures/temporaryFolder.ts';
import { jsonOf, tiegel } from '../fixtures/tiegel.ts';
import { until } from '../fixtures/until.ts';

let folder: Awaited<ReturnType<typeof temporaryFolder>>;
let api: RunningApi;
let environment: Record<string, string>;
let id: string;

const specification = {
  version: 1,
  name: 'Cobalt or not',
  elements: { pool: ['Al', 'Co', 'Cr', 'Fe', 'Ni', 'Ti'] },
  components: 5,
  fractions: { step: 5, min: 5, max: 35 },
  limits: [{ quantity: 'density', max: 7.6 }],
  rank: [{ quantity: 'sizeMismatch', prefer: 'low' }],
  lets: { stiffness: 'youngsModulus / density' },
  front: [
    { quantity: 'density', prefer: 'low' },
    { quantity: 'omega', prefer: 'high' },
  ],
  keep: 300,
};

async function http(path: string, body?: unknown): Promise<Response> {
  const sent = {
    method: 'POST',
    body: JSON.stringify(body),
    headers: { 'content-type': 'application/json' },
  };
  const answer = await fetch(`${api.url}/api/v1${path}`, body === undefined ? {} : sent);
  if (!answer.ok) throw new Error(`${path}: ${await answer.text()}`);
  return answer;
}

async function jsonAt<Answer>(path: string, body?: unknown): Promise<Answer> {
  return (await (await http(path, body)).json()) as Answer;
}

beforeAll(async () => {
  folder = await temporaryFolder('parity');
  environment = { DATA_DIR: folder.path };
  api = await startApi({ dataFolder: folder.path, port: await freePort(), workers: 1 });
  id = (await jsonAt<{ id: string }>('/searches', specification)).id;
  await until('the search is done', async () => {
    return (await jsonAt<SearchView>(`/searches/${id}`)).state === 'done';
  });
});
afterAll(async () => {
  await api?.kill();
  await folder?.remove();
});

// The ranges in another order than the service sorts them.
const selected = ['--max', 'stiffness=30', '--min', 'omega=1.1', '--max', 'density=7.5', '--with', 'Al,Fe'];
const selection = 'max.density=7.5&min.omega=1.1&max.stiffness=30&has=Al,Fe';

test.each(exportFormats)('%s of the terminal is byte for byte that of the route', async (format) => {
  const into = join(folder.path, `kept.${format}`);
  const asked = ['results', 'show', id, '--format', format];
  for (const [options, query] of [
    [[], ''],
    [['--order', 'density', '--descending', ...selected], `&order=density&direction=desc&${selection}`],
    [['--front', '--without', 'Co'], '&front=yes&without=Co'],
  ] as const) {
    const answer = await http(`/searches/${id}/export?format=${format}${query}`);
    const bytes = Buffer.from(await answer.arrayBuffer());
    const told = await jsonOf([...asked, '--into', into, '--overwrite', ...options], { environment });
    expect(told).toEqual({ file: into, format, bytes: bytes.length });
    expect(readFileSync(into).equals(bytes)).toBe(true);
  }
  const piped = execFileSync(process.execPath, [
    join(import.meta.dirname, '../../services/cli/src/main.mjs'),
    ...[...asked, '--into', '-', '--database', join(folder.path, 'tiegel.sqlite')],
  ]);
  const whole = await http(`/searches/${id}/export?format=${format}`);
  expect(piped.equals(Buffer.from(await whole.arrayBuffer()))).toBe(true);
});

test('a file that is there stays as it is, and nothing half-written is left', async () => {
  const into = join(folder.path, 'mine.csv');
  writeFileSync(into, 'mine');
  const asked = ['results', 'show', id, '--format', 'csv', '--into'];
  const { code, error } = await tiegel([...asked, into], { environment });
  expect({ code, error }).toEqual({ code: 1, error: expect.stringContaining('[file/exists]') });
  expect(readFileSync(into, 'utf8')).toBe('mine');
  const nowhere = join(folder.path, 'no such folder', 'kept.csv');
  expect(await tiegel([...asked, nowhere], { environment })).toMatchObject({
    code: 1,
    error: expect.stringContaining(`${nowhere} cannot be written: its folder is not there.`),
  });
  expect(existsSync(nowhere)).toBe(false);
  expect((await tiegel([...asked, folder.path, '--overwrite'], { environment })).error).toContain(
    '[file/unwritable]',
  );
  expect(readdirSync(folder.path).filter((name) => name.includes('unfinished'))).toEqual([]);
});

test.each([
  [['--format', 'csv'], 'command/usage'],
  [['--into', 'x.csv'], 'command/usage'],
  [['--format', 'xls', '--into', 'x.xls'], 'command/usage'],
  [['--format', 'csv', '--into', '-', '--rows', '5'], 'command/usage'],
  [['--format', 'csv', '--into', '-', '--json'], 'command/usage'],
  [['--format', 'csv', '--into', '-', '--max', 'densty=7'], 'request/invalid'],
  [
    ['--format', 'csv', '--into', '-', '--min', 'density=8', '--max', 'density=7'],
    'specification/bounds-crossed',
  ],
])('what is wrong with %j is told with exit 1, and nothing is written', async (words, code) => {
  const ran = await tiegel(['results', 'show', id, ...words], { environment });
  expect(ran).toEqual({ code: 1, out: '', error: expect.stringContaining(`[${code}]`) });
});

test.each([
  [['elements'], 'element-use?'],
  [['elements', ...selected], `element-use?${selection}`],
  [['distributions'], 'distributions?'],
  [
    ['distributions', '--quantities', 'omega,stiffness', ...selected],
    `distributions?quantities=omega,stiffness&${selection}`,
  ],
  [
    ['front', '--between', 'density=low,omega=high'],
    'trade-off?first=density&preferFirst=low&second=omega&preferSecond=high',
  ],
  [
    ['front', '--between', 'stiffness=high,cost=low', ...selected],
    `trade-off?first=stiffness&preferFirst=high&second=cost&preferSecond=low&${selection}`,
  ],
])('results %j tells what the route tells', async ([command, ...options], route) => {
  const told = await jsonOf(['results', command!, id, ...options], { environment });
  expect(told).toEqual(await jsonAt(`/searches/${id}/${route}`));
  expect(told.meeting).toBeGreaterThan(0);
});

test('a shortlist is the same file, but for the minute in which its page was made', async () => {
  const { id: list } = await jsonOf(['shortlist', 'begin', 'Both', '--by', 'A'], { environment });
  await jsonOf(['shortlist', 'add', list, 'CoCrFeNi', 'Al10Co30Cr30Fe30', '--by', 'A'], { environment });
  for (const format of ['html', 'csv']) {
    const asked = ['shortlist', 'export', list, '--format', format, '--into', '-'];
    const { code, out } = await tiegel(asked, { environment });
    expect(code).toBe(0);
    const route = await (await http(`/shortlists/${list}/export?format=${format}`)).text();
    const undated = (text: string) => text.replace(/as of [\d-]+ [\d:]+ UTC/, 'as of then');
    expect(undated(out)).toBe(undated(route));
    expect(out).toContain(format === 'csv' ? 'Co25Cr25Fe25Ni25' : 'Co25 Cr25 Fe25 Ni25');
  }
  const refused = await tiegel(['shortlist', 'export', 'none', '--format', 'csv', '--into', '-'], {
    environment,
  });
  expect(refused).toMatchObject({ code: 1, error: expect.stringContaining('[shortlist/unknown]') });
});

test('quantities are told alike', async () => {
  const told = await jsonOf(['data', 'quantities'], { environment });
  expect(told).toEqual(await jsonAt('/quantities'));
  const { out } = await tiegel(['data', 'quantities'], { environment });
  expect(out).toMatch(/^density \(g\/cm³\)\n {2}Density: .*\n(?: {2}.*\n)*? {2}ρ = /m);
  expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
});

test('saved charge sheets are listed and shown as their routes tell them', async () => {
  expect((await tiegel(['charge-sheets', 'list'], { environment })).out).toContain(
    'No charge sheet was saved',
  );
  const charge = ['charge', 'CoCrFeNi', '--mass', '50', '--resolution', '0.001', '--save', 'Trial'];
  const { number } = await jsonOf(charge, { environment });
  expect(await jsonOf(['charge-sheets', 'show', number], { environment })).toEqual(
    await jsonAt(`/charge-sheets/${number}`),
  );
  const [summary] = await jsonAt<object[]>('/charge-sheets');
  expect(await jsonOf(['charge-sheets', 'list'], { environment })).toEqual([
    expect.objectContaining(summary!),
  ]);
  const { out } = await tiegel(['charge-sheets', 'show', number], { environment });
  expect(out).toMatch(/^Charge sheet C-0001\n[-\d]+ [:\d]+ UTC Trial\nCo25 Cr25 Fe25 Ni25 at\.%, 50 g/);
  expect(out).toMatch(/Price list in force then: [-\d]+, EUR, invented for demonstration\.\n\nCAUTIONS/);
  expect((await tiegel(['charge-sheets', 'list'], { environment })).out).toMatch(
    /^C-0001 +[-\d]+ [:\d]+ +50 +Co25 Cr25 Fe25 Ni25 +Trial$/m,
  );
  const unknown = await tiegel(['charge-sheets', 'show', 'C-0099'], { environment });
  expect(unknown).toMatchObject({ code: 1, error: expect.stringContaining('[charge/not-found]') });
});

test('what two searches have differently is told alike, and refused alike', async () => {
  const { name: _name, ...rest } = specification;
  const other = { ...rest, limits: [{ quantity: 'stiffness', min: 20 }], keep: 10 };
  const { id: changed } = await jsonAt<{ id: string }>('/searches', other);
  const told = await jsonOf(['results', 'changed', changed, id], { environment });
  expect(told).toEqual(await jsonAt(`/searches/${changed}/changes/${id}`));
  expect(told).toEqual({
    search: changed,
    other: id,
    changes: [
      { what: 'Kept of all', before: '300', after: '10' },
      { what: 'Limit on density', before: 'density ≤ 7.6 g/cm³', after: null },
      { what: 'Limit on stiffness', before: null, after: expect.stringMatching(/^stiffness ≥ 20 \S/) },
    ],
  });
  const { out } = await tiegel(['results', 'changed', changed, id], { environment });
  expect(out).toContain('\nKept of all\n  there  300\n  here   10\n');
  expect((await tiegel(['results', 'changed', id, id], { environment })).out).toBe(
    'Nothing: both ask the same of the same data.\n',
  );
  expect((await fetch(`${api.url}/api/v1/searches/${id}/changes/none`)).status).toBe(404);
  expect(await tiegel(['results', 'changed', id, 'none'], { environment })).toMatchObject({
    code: 1,
    error: expect.stringContaining('[search/unknown]'),
  });
});
