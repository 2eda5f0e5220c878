import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import demonstration from '../../packages/search/demonstration.spec.json' with { type: 'json' };
import { freePort } from '../fixtures/freePort.ts';
import { type RunningApi, startApi } from '../fixtures/processes.ts';
import { temporaryFolder } from '../fixtures/temporaryFolder.ts';
import { jsonOf, tiegel } from '../fixtures/tiegel.ts';
import { until } from '../fixtures/until.ts';

let folder: Awaited<ReturnType<typeof temporaryFolder>>;
let settings: Parameters<typeof startApi>[0];
let api: RunningApi;
/** The terminal finds the database of the service by the same variable. */
let environment: Record<string, string>;
beforeAll(async () => {
  folder = await temporaryFolder('beside');
  settings = { dataFolder: folder.path, port: await freePort(), workers: 1 };
  environment = { DATA_DIR: folder.path };
  api = await startApi(settings);
});
afterAll(async () => {
  await api?.kill();
  await folder?.remove();
});

async function http<Answer>(path: string, body?: unknown): Promise<Answer> {
  const answer = await fetch(`${api.url}/api/v1${path}`, {
    ...(body === undefined
      ? {}
      : { method: 'POST', body: JSON.stringify(body), headers: { 'content-type': 'application/json' } }),
  });
  if (!answer.ok) throw new Error(`${path}: ${await answer.text()}`);
  return (await answer.json()) as Answer;
}

// All invented.
const melt = (name: string) => ({
  ...{ name, date: '2026-11-25', charge: null, ingot: null, process: 'arc melting', anneal: null },
  weighed: [
    { material: 'Fe', mass: 10 },
    { material: 'Ni', mass: 10 },
  ],
  ...{ phases: ['FCC'], methods: ['X-ray diffraction'], hardness: null, density: null, notes: '' },
});
const charge = (name: string) => ({ composition: 'FeNi', mass: 50, resolution: 0.001, name });
const terminal = ['charge', 'FeNi', '--mass', '50', '--resolution', '0.001', '--save'];
interface Pair {
  a: string;
  b: string;
  mixingEnthalpy: number;
  import: number | null;
}
const aluminiumNickel = async () =>
  (await http<Pair[]>('/pairs')).find(({ a, b }) => [a, b].sort().join() === 'Al,Ni')!;

test('short commands work while the service runs on the same database, and both lose nothing when they write at once', async () => {
  // The service holds data in memory and works on a search meanwhile.
  expect(await aluminiumNickel()).toMatchObject({ import: null });
  const { id: search } = await http<{ id: string }>('/searches', demonstration);
  const options = { environment };
  const fromTerminal = Promise.all([
    jsonOf([...terminal, 'terminal 1'], options),
    jsonOf([...terminal, 'terminal 2'], options),
    jsonOf(['melt', 'record', '-'], { environment, input: JSON.stringify(melt('terminal 1')) }),
    jsonOf(['melt', 'record', '-'], { environment, input: JSON.stringify(melt('terminal 2')) }),
    jsonOf(['shortlist', 'begin', 'From the terminal', '--by', 'A'], options),
    jsonOf(['data', 'import', 'pairs', '-'], { environment, input: 'a,b,mixingEnthalpy\nAl,Ni,-30\n' }),
  ]);
  let ended = false;
  void fromTerminal.finally(() => {
    ended = true;
  });
  let sent = 0;
  // As long as the terminal writes, so does the service.
  while (!ended) {
    sent += 1;
    await Promise.all([http('/charge-sheets', charge(`http ${sent}`)), http('/melts', melt(`http ${sent}`))]);
  }
  const [first, second, , , list] = await fromTerminal;
  expect(sent).toBeGreaterThan(5);

  const names = (where: string) => Array.from({ length: sent }, (_, at) => `${where} ${at + 1}`);
  const wanted = [...names('http'), 'terminal 1', 'terminal 2'].sort();
  const sheets = await http<{ number: string; name: string }[]>('/charge-sheets');
  expect(sheets.map(({ name }) => name).sort()).toEqual(wanted);
  // No number is given twice, and none is left out.
  expect(sheets.map(({ number }) => number).sort()).toEqual(
    wanted.map((_, at) => `C-${String(at + 1).padStart(4, '0')}`),
  );
  for (const { number, name } of [first, second])
    expect(sheets).toContainEqual(expect.objectContaining({ number, name }));
  const { items: melts } = await http<{ items: { id: string; name: string }[] }>('/melts');
  expect(melts.map(({ name }) => name).sort()).toEqual(wanted);
  expect(await http('/shortlists')).toMatchObject({
    items: [{ id: list.id, name: { value: 'From the terminal' } }],
  });
  // What the service held in memory is not stale, and its answers rest on it.
  expect(await aluminiumNickel()).toMatchObject({ mixingEnthalpy: -30, import: 1 });
  const told = await http<{ nearest: { melt: string | null }[] }>('/explain', { composition: 'FeNi' });
  expect(told.nearest[0]!.melt).not.toBeNull();

  const done = await until('the search is done', async () => {
    const view = await http<{ state: string; counts: { points: number } }>(`/searches/${search}`);
    return view.state === 'done' && view;
  });
  const { points } = await http<{ points: number }>('/count', demonstration);
  expect(done.counts.points).toBe(points);

  // The terminal reads what the service knows, and picks from its searches.
  const listed = await jsonOf(['melt', 'list'], options);
  expect(listed.map(({ id }: { id: string }) => id)).toEqual(melts.map(({ id }) => id));
  const picked = await jsonOf(
    ['shortlist', 'pick', list.id, '--search', search, '--count', '3', '--by', 'A'],
    options,
  );
  expect(picked.entries).toHaveLength(3);
  expect(await http(`/shortlists/${list.id}`)).toMatchObject({ entries: picked.entries });

  await api.kill();
  api = await startApi(settings);
  expect(await http('/charge-sheets')).toHaveLength(wanted.length);
}, 300_000);

test('what is wrong is told as ever, and only one process works on the searches', async () => {
  const unknown = await tiegel(['shortlist', 'show', 'nothing'], { environment });
  expect(unknown).toMatchObject({ code: 1, out: '' });
  expect(unknown.error).toContain('[shortlist/unknown]');
  const input = JSON.stringify({ ...melt('wrong'), phases: ['FCC', 'FCC'] });
  expect((await tiegel(['melt', 'record', '-'], { environment, input })).error).toContain(
    '[melt/phase-twice]',
  );
  const specification = join(import.meta.dirname, '../../packages/search/demonstration.spec.json');
  const other = await tiegel(['search', specification, '--database', join(folder.path, 'tiegel.sqlite')]);
  expect(other).toMatchObject({ code: 2, out: '' });
  expect(other.error).toContain('[store/in-use]');
});
