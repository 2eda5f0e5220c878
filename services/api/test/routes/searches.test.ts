import { afterAll, beforeAll, expect, test } from 'vitest';
import { fixtureSearch, type TestServer, testServer } from '../fixtures/testServer.ts';

let server: TestServer;
beforeAll(async () => {
  server = await testServer();
});
afterAll(() => server.close());

const post = (path: string, payload?: object, headers: Record<string, string> = {}) =>
  server.ask({
    method: 'POST',
    url: `/api/v1${path}`,
    ...(payload === undefined ? {} : { payload }),
    headers,
  });
const get = (path: string) => server.ask({ url: `/api/v1${path}` });

/** A search of 3·10⁸ points: long enough to be caught at work. */
const long = {
  name: 'long',
  elements: { pool: ['Al', 'Co', 'Cr', 'Cu', 'Fe', 'Mn', 'Mo', 'Ni', 'Ti', 'V'] },
  components: 6,
  fractions: { step: 2.5 },
  limits: [{ quantity: 'density', max: 7 }],
  rank: [{ quantity: 'density', prefer: 'low' }],
};

test('a specification is counted exactly, before anything runs', async () => {
  const { specification, expected } = fixtureSearch('six-5pct-omega');
  const { systems, points } = expected.counts;
  const answer = await post('/count', specification);
  expect(answer.statusCode).toBe(200);
  expect(answer.json()).toMatchObject({ systems, points, workers: 2 });
  expect(answer.json().question).toMatch(/^six of Al Co Cr Cu Fe Mn Ni/);
});

test('a search is accepted at once, found at its address, and finishes with the counts of an independent script', async () => {
  const { specification, expected } = fixtureSearch('six-5pct-omega');
  const accepted = await post('/searches', specification);
  expect(accepted.statusCode).toBe(202);
  const { id } = accepted.json();
  expect(id).toMatch(/^[\w-]{6,40}$/);
  expect(accepted.headers.location).toBe(`/api/v1/searches/${id}`);

  await server.searches.finished(id);
  const view = (await get(`/searches/${id}`)).json();
  expect(view).toMatchObject({
    id,
    name: specification.name,
    state: 'done',
    reason: null,
    counts: expected.counts,
    kept: expected.candidates.length,
    progress: { points: expected.counts.points, total: expected.counts.points },
    prices: { currency: 'EUR', invented: true },
  });
  expect(view.seconds).toBeGreaterThan(0);
  expect(view.finishedAt).toMatch(/Z$/);
  expect((await get('/searches')).json()[0]).toEqual(view);
});

test('the same idempotency key starts one search', async () => {
  const { specification } = fixtureSearch('one-to-two-unranked-last');
  const headers = { 'idempotency-key': 'again-and-again' };
  const answers = await Promise.all([1, 2, 3].map(() => post('/searches', specification, headers)));
  expect(answers.map(({ statusCode }) => statusCode)).toEqual([202, 202, 202]);
  expect(new Set(answers.map((answer) => answer.json().id)).size).toBe(1);
  const other = await post('/searches', specification, { 'idempotency-key': 'another' });
  expect(other.json().id).not.toBe(answers[0]!.json().id);
});

test('a search is paused, resumed and cancelled, and says so each time', async () => {
  const { id } = (await post('/searches', long)).json();
  expect((await post(`/searches/${id}/pause`)).json()).toMatchObject({ id, state: 'paused' });
  expect((await get(`/searches/${id}`)).json().state).toBe('paused');
  expect(['waiting', 'running']).toContain((await post(`/searches/${id}/resume`)).json().state);
  expect((await post(`/searches/${id}/cancel`)).json()).toMatchObject({ id, state: 'cancelled' });
  expect((await server.searches.finished(id)).state).toBe('cancelled');
});

test('what a finished search can no longer do is refused as a conflict', async () => {
  const view = await server.search(fixtureSearch('one-to-two-unranked-last').specification);
  for (const verb of ['pause', 'resume', 'cancel']) {
    const answer = await post(`/searches/${view.id}/${verb}`);
    expect(answer.statusCode, verb).toBe(409);
  }
});

test('a search above the limit of points is refused with its count', async () => {
  const small = await testServer({}, { maxPoints: 1000 });
  const { specification, expected } = fixtureSearch('six-5pct-omega');
  const answer = await small.ask({ method: 'POST', url: '/api/v1/searches', payload: specification });
  await small.close();
  expect(answer.statusCode).toBe(400);
  expect(answer.json().detail).toContain(expected.counts.points.toLocaleString('en'));
});

test('what was ignored or rounded is told', async () => {
  const answer = await post('/count', {
    ...long,
    fractions: { step: 10, min: 5, max: 35, each: { Zr: { max: 10 } } },
  });
  expect(answer.json().notices.join(' ')).toMatch(/Zr.*ignored/);
});
