import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { SearchView } from '@tiegel/contract';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { freePort } from '../fixtures/freePort.ts';
import { type RunningApi, startApi } from '../fixtures/processes.ts';
import { temporaryFolder } from '../fixtures/temporaryFolder.ts';
import { jsonOf, tiegel } from '../fixtures/tiegel.ts';

let folder: Awaited<ReturnType<typeof temporaryFolder>>;
let api: RunningApi;
let environment: Record<string, string>;
beforeAll(async () => {
  folder = await temporaryFolder('searches');
  api = await startApi({ dataFolder: folder.path, port: await freePort(), workers: 1 });
  environment = { TIEGEL_SERVER: api.url };
});
afterAll(async () => {
  await api?.kill();
  await folder?.remove();
});

/** Never worked on here, for its hours are others than those of now. */
const asleep = JSON.stringify({
  name: 'Asleep',
  elements: { pool: ['Al', 'Co', 'Cr', 'Cu', 'Fe', 'Mn', 'Mo', 'Ni', 'Ti', 'V'] },
  components: 6,
  fractions: { step: 2.5 },
  limits: [{ quantity: 'density', max: 7 }],
  rank: [{ quantity: 'density', prefer: 'low' }],
});

/** A time of day, so many hours from now. */
const clockIn = (hours: number) => new Date(Date.now() + hours * 3_600_000).toISOString().slice(11, 16);
const searches = (words: string[]) => tiegel(['searches', ...words], { environment });
const stateAt = async (id: string) =>
  (await (await fetch(`${api.url}/api/v1/searches/${id}`)).json()) as SearchView;

test('a search of a running service is started, held, rescheduled, taken up and ended from the terminal', async () => {
  expect((await searches(['list'])).out).toContain('no search yet');
  const [from, to] = [clockIn(3), clockIn(5)];
  const when = ['--hours', `${from}-${to}`, '--zone', 'UTC', '--priority', 'last'];
  const { id, schedule }: SearchView = await jsonOf(['searches', 'start', '-', ...when], {
    environment,
    input: asleep,
  });
  const hours = { zone: 'UTC', from, to };
  expect(schedule).toEqual({ hours, priority: 'last' });

  const paused = await searches(['pause', id]);
  expect(paused).toEqual({ code: 0, error: '', out: expect.stringContaining(`${id} is paused, `) });
  expect((await stateAt(id)).state).toBe('paused');

  expect((await searches(['priority', id, 'first'])).out).toBe(
    `${id} is worked on from ${from} to ${to} (UTC), before all others.\n`,
  );
  expect((await stateAt(id)).schedule).toEqual({ hours, priority: 'first' });
  expect((await searches(['hours', id, 'any'])).out).toBe(
    `${id} is worked on at any time, before all others.\n`,
  );
  expect((await stateAt(id)).schedule).toEqual({ hours: null, priority: 'first' });
  const berlin = { zone: 'Europe/Berlin', from: '22:00', to: '05:30' };
  await searches(['hours', id, '22:00-05:30', '--zone', 'Europe/Berlin']);
  expect((await stateAt(id)).schedule.hours).toEqual(berlin);
  await searches(['hours', id, `${from}-${to}`, '--zone', 'UTC']);
  const listed = (await searches(['list'])).out;
  expect(listed).toMatch(new RegExp(`^${id} +paused +0 % +– +${from} to ${to} +first +Asleep$`, 'm'));
  expect(listed).toContain('\nHours are those of UTC.\n');

  const resumed: SearchView = await jsonOf(['searches', 'resume', id], { environment });
  expect(resumed.state).not.toBe('paused');
  expect((await stateAt(id)).state).toBe(resumed.state);
  const address = ['--server', `${api.url}/`];
  const cancelled = await tiegel(['searches', 'cancel', id, ...address]);
  expect(cancelled).toMatchObject({ code: 0, out: expect.stringContaining(`${id} is cancelled`) });
  const all: SearchView[] = await jsonOf(['searches', 'list'], { environment });
  expect(all).toEqual(await (await fetch(`${api.url}/api/v1/searches`)).json());
  expect(all[0]).toMatchObject({ id, state: 'cancelled' });
  // What a service refuses is told in its words.
  expect(await searches(['resume', id])).toMatchObject({
    code: 1,
    out: '',
    error: expect.stringContaining('[search/not-possible]'),
  });
});

test('a search is watched until it is over, also when it is paused meanwhile', async () => {
  const short = JSON.stringify({
    ...JSON.parse(asleep),
    name: 'Short',
    components: 5,
    fractions: { step: 5 },
  });
  const { id }: SearchView = await jsonOf(['searches', 'start', '-'], { environment, input: short });
  await searches(['pause', id]);
  const watching = searches(['watch', id]);
  await searches(['resume', id]);
  expect(await watching).toMatchObject({
    code: 0,
    out: expect.stringContaining(`${id} is done, 100 % of `),
  });
  // What is over is told at once, and what was not found is an error.
  const over: SearchView = await jsonOf(['searches', 'watch', id], { environment });
  expect(over).toEqual(await stateAt(id));
});

test('a search that failed is told with its reason, and is no success', async () => {
  const [view] = (await (await fetch(`${api.url}/api/v1/searches`)).json()) as SearchView[];
  const failed = { ...view!, state: 'failed', reason: 'A part of it could not be scored.' };
  const other = createServer((_, answer) => answer.end(JSON.stringify(failed))).listen(0, '127.0.0.1');
  await new Promise((resolve) => other.once('listening', resolve));
  const address = `http://127.0.0.1:${(other.address() as AddressInfo).port}`;
  const ran = await tiegel(['searches', 'watch', view!.id, '--server', address]);
  other.close();
  expect(ran).toEqual({
    code: 2,
    out: expect.stringContaining(`${view!.id} is failed`),
    error: expect.stringMatching(/be scored\.\n.*\[command\/search-ended\]/),
  });
});

test.each([
  [['watch', 'none'], 'search/unknown', 1],
  [['pause', 'none'], 'search/unknown', 1],
  [['pause', '../x'], 'search/unknown', 1],
  [['hours', 'none', '8-9'], 'command/usage', 1],
  [['start', '-', '--hours', '20:00-06:00', '--zone', 'Nowhere'], 'schedule/unknown-zone', 1],
  [['start', '-', '--hours', '25:00-06:00'], 'request/wrong-value', 1],
  [['priority', 'none', 'soon'], 'command/usage', 1],
  [['list', '--server', 'localhost:4270'], 'server/address', 1],
  [['list', '--server', 'http://127.0.0.1:1'], 'server/out-of-reach', 2],
] as const)('what is wrong with %j is told with its code and exit', async (words, problem, code) => {
  const ran = await tiegel(['searches', ...words], { environment, input: asleep });
  expect(ran).toEqual({ code, out: '', error: expect.stringContaining(`[${problem}]`) });
});

test('a service that is asked by https although it speaks none is told in words', async () => {
  const ran = await tiegel(['searches', 'list', '--server', api.url.replace('http:', 'https:')]);
  expect(ran).toEqual({ code: 2, out: '', error: expect.stringContaining('it speaks no TLS') });
  expect(ran.error).not.toContain('routines');
});

test('a specification that is wrong is told with every place, as by the page', async () => {
  const wrong = JSON.stringify({
    elements: { pool: ['Fe', 'Xx'] },
    limits: [{ quantity: 'densty', max: 7 }],
  });
  const { code, error } = await tiegel(['searches', 'start', '-'], { environment, input: wrong });
  expect(code).toBe(1);
  expect(error).toContain('/elements/pool/1');
  expect(error).toContain('/limits/0/quantity');
});

test('what is no service of this kind is not taken for one', async () => {
  const other = createServer((_, answer) => answer.end('<html>Welcome</html>')).listen(0, '127.0.0.1');
  await new Promise((resolve) => other.once('listening', resolve));
  const address = `http://127.0.0.1:${(other.address() as AddressInfo).port}`;
  const ran = await tiegel(['searches', 'list', '--server', address]);
  other.close();
  expect(ran).toEqual({ code: 2, out: '', error: expect.stringContaining('[server/other-answer]') });
});
