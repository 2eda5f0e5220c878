import { readdirSync, readFileSync } from 'node:fs';
import type { InjectOptions } from 'fastify';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { malformedFixtures } from '../../../test/flows/malformedFixtures.ts';
import { type TestServer, testServer } from './fixtures/testServer.ts';

let server: TestServer;
beforeAll(async () => {
  server = await testServer();
});
afterAll(() => server.close());

/** Asks, and checks what holds for every wrong request. */
async function faultsOf(
  request: InjectOptions,
): Promise<{ status: number; faults: { code: string; pointer: string }[] }> {
  const answer = await server.ask(request);
  expect(answer.headers['content-type']).toBe('application/problem+json');
  expect(answer.statusCode).toBeGreaterThanOrEqual(400);
  expect(answer.statusCode).toBeLessThan(500);
  // A line of a stack, or a file of this program.
  expect(answer.body).not.toMatch(/\bat \S+ \(|\.ts:\d|node_modules/);
  const { status, faults } = answer.json();
  expect(status).toBe(answer.statusCode);
  for (const { detail, remedy } of faults) {
    expect(detail).toMatch(/[.?)]$/);
    expect(remedy).toMatch(/\.$/);
  }
  return {
    status,
    faults: faults.map(({ code, pointer }: { code: string; pointer: string }) => ({ code, pointer })),
  };
}

const json = { 'content-type': 'application/json' };

for (const { name, text, faults } of malformedFixtures('specification')) {
  test.each(['/api/v1/count', '/api/v1/searches'])(
    `specification ${name}: %s says every fault at its place`,
    async (url) => {
      expect((await faultsOf({ method: 'POST', url, payload: text, headers: json })).faults).toEqual(faults);
    },
  );
}

for (const { name, text, faults } of malformedFixtures('alloy')) {
  test(`alloy ${name}: screening says every fault at its place`, async () => {
    const payload = { compositions: ['CoCrFeNi', text.replace(/\n$/, '')] };
    const expected = faults.map(({ code, pointer }) => ({ code, pointer: `/compositions/1${pointer}` }));
    expect((await faultsOf({ method: 'POST', url: '/api/v1/screen', payload })).faults).toEqual(expected);
  });
}

for (const { name, text, faults } of malformedFixtures('prices')) {
  test(`price list ${name}: every fault is said at its place, and the list in force stays`, async () => {
    const before = (await server.ask({ url: '/api/v1/prices' })).body;
    const headers = { 'content-type': 'text/csv' };
    expect((await faultsOf({ method: 'PUT', url: '/api/v1/prices', payload: text, headers })).faults).toEqual(
      faults,
    );
    expect((await server.ask({ url: '/api/v1/prices' })).body).toBe(before);
  });
}

const requests = new URL('../../../test/fixtures/malformed/request/', import.meta.url);
const names = readdirSync(requests)
  .filter((file) => !file.endsWith('.expected.json'))
  .map((file) => file.replace(/\.json$/, ''));
const read = (file: string) => JSON.parse(readFileSync(new URL(file, requests), 'utf8'));

test.each(names)('request %s: every fault is said at its place', async (name) => {
  const { body, ...request } = read(`${name}.json`);
  const found = await faultsOf({ ...request, ...(body === null ? {} : { payload: body }) });
  expect(found).toEqual(read(`${name}.expected.json`));
});

test.each([
  ['/api/v1/explain', (names: object) => ({ composition: names })],
  ['/api/v1/charge', (loss: object) => ({ composition: 'CoNi', mass: 50, resolution: 0.001, loss })],
  ['/api/v1/charge', (purity: object) => ({ composition: 'CoNi', mass: 50, resolution: 0.001, purity })],
  [
    '/api/v1/melts',
    (loss: object) => ({
      ...{ date: '2026-11-25', process: 'arc melting', loss },
      weighed: [{ material: 'Ni', mass: 5 }],
    }),
  ],
])(
  '%s names a hundred of the wrong symbols of an object, and says that there are more',
  async (url, body) => {
    const names = Object.fromEntries(Array.from({ length: 20_000 }, (_, place) => [`K${place}`, 1]));
    const { status, faults } = await faultsOf({ method: 'POST', url, payload: body(names) });
    expect([status, faults.length, faults.at(-1)!.code]).toEqual([400, 101, 'request/more-faults']);
  },
);

test('a key of an alloy that a program would take for something else is no element', async () => {
  const payload = '{"composition": {"__proto__": 5, "Co": 50}}';
  const { faults } = await faultsOf({ method: 'POST', url: '/api/v1/explain', payload, headers: json });
  expect(faults).toEqual([{ code: 'element/unknown', pointer: '/composition/__proto__' }]);
});

test('nothing of what was refused was started', async () => {
  expect((await server.ask({ url: '/api/v1/searches' })).json()).toEqual([]);
});
