import { afterAll, beforeAll, expect, test } from 'vitest';
import { type TestServer, testServer } from '../fixtures/testServer.ts';

let server: TestServer;
beforeAll(async () => {
  server = await testServer();
});
afterAll(() => server.close());

const specification = {
  elements: { pool: ['Co', 'Cr', 'Fe', 'Ni'] },
  components: 3,
  fractions: { step: 5 },
  rank: [{ quantity: 'density', prefer: 'low' }],
};
const clock = (hours: number) => new Date(Date.now() + hours * 3600e3).toISOString().slice(11, 16);
const start = (query: string) =>
  server.ask({ method: 'POST', url: `/api/v1/searches${query}`, payload: specification });
const put = (id: string, payload: object) =>
  server.ask({ method: 'PUT', url: `/api/v1/searches/${id}/schedule`, payload });

test('a search begins with its hours, waits for them, and goes on when they are taken away', async () => {
  const [from, to] = [clock(2), clock(3)];
  const { id } = (await start(`?hours=${from}-${to}&zone=UTC&priority=first`)).json();
  const waiting = (await server.ask({ url: `/api/v1/searches/${id}` })).json();
  expect(waiting).toMatchObject({
    state: 'waiting',
    schedule: { hours: { zone: 'UTC', from, to }, priority: 'first' },
  });
  const changed = await put(id, { hours: null, priority: 'usual' });
  expect(changed.json().schedule).toEqual({ hours: null, priority: 'usual' });
  expect(await server.searches.finished(id)).toMatchObject({ state: 'done' });
});

test('a misspelt parameter is refused with the nearest name, and nothing starts', async () => {
  const before = (await server.ask({ url: '/api/v1/searches' })).json();
  const answer = await start('?hour=20:00-06:00&prority=last');
  expect(answer.statusCode).toBe(400);
  expect(answer.json().faults).toMatchObject([
    { code: 'request/unknown-key', pointer: '/hour', detail: expect.stringContaining('"hours"') },
    { code: 'request/unknown-key', pointer: '/prority', detail: expect.stringContaining('"priority"') },
  ]);
  expect((await server.ask({ url: '/api/v1/searches' })).json()).toEqual(before);
  const count = await server.ask({ method: 'POST', url: '/api/v1/count?step=5', payload: specification });
  expect(count.json().faults).toMatchObject([
    { pointer: '/step', remedy: 'Leave "step" out: nothing is taken here.' },
  ]);
  const listed = await server.ask({ url: '/api/v1/searches?state=done' });
  expect(listed.json().faults).toMatchObject([{ pointer: '/state' }]);
});

test('a zone that nobody knows and a time that is none are refused, each at its place', async () => {
  const { id } = (await start('')).json();
  const zone = await put(id, {
    hours: { zone: 'Middle/Earth', from: '20:00', to: '06:00' },
    priority: 'usual',
  });
  expect(zone.statusCode).toBe(400);
  expect(zone.json().faults).toMatchObject([{ code: 'schedule/unknown-zone', pointer: '/hours/zone' }]);
  const time = await put(id, { hours: { zone: 'UTC', from: '25:00', to: '06:00' }, priority: 'usual' });
  expect(time.json().faults).toMatchObject([{ pointer: '/hours/from' }]);
  expect((await start('?hours=20:00-06:00&zone=Nowhere')).json()).toMatchObject({
    code: 'schedule/unknown-zone',
  });
  expect((await put('none', { hours: null, priority: 'usual' })).statusCode).toBe(404);
});
