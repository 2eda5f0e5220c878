import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Shortlist } from '@tiegel/contract';
import { roleInWords, roles } from '@tiegel/contract/terms';
import { openTokens } from '@tiegel/search/laboratory';
import { openStore } from '@tiegel/store';
import type { InjectOptions } from 'fastify';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { neededRole } from '../../src/access/neededRole.ts';
import { type TestServer, testServer } from '../fixtures/testServer.ts';

const store = openStore({ file: null, columns: [] });
const tokens = openTokens(store.tokens);
const tokenOf = {
  reader: tokens.give('Rea', 'reader').token,
  author: tokens.give('Aut', 'author').token,
  keeper: tokens.give('Kee', 'keeper').token,
};
type Role = keyof typeof tokenOf;
const rolesInOrder = ['reader', 'author', 'keeper'] as const;

let server: TestServer;
/** Every route of the document, as `METHOD /path/:parameter`. */
let operations: string[];
beforeAll(async () => {
  server = await testServer({ tokens });
  const { paths } = (await as('reader', { url: '/api/v1/openapi.json' })).json();
  operations = Object.entries(paths as Record<string, object>).flatMap(([path, methods]) =>
    Object.keys(methods).map((method) => `${method.toUpperCase()} ${path.replaceAll(/\{(\w+)\}/g, ':$1')}`),
  );
});
afterAll(async () => {
  await server.close();
  store.close();
});

const bearer = (token: string) => ({ authorization: `Bearer ${token}` });
const as = (role: Role, request: InjectOptions) =>
  server.ask({ ...request, headers: { ...request.headers, ...bearer(tokenOf[role]) } });

/** A request to a route that is refused for its content, if it is not refused for who asks. */
function requestTo(operation: string): InjectOptions {
  const [method, path] = operation.split(' ') as [NonNullable<InjectOptions['method']>, string];
  const url = path.replace(':id', 'none').replace(/:\w+/, 'none');
  return { method, url };
}

const forAnybody = [
  ...['GET /health', 'GET /ready', 'GET /api/v1/health', 'GET /api/v1/ready'],
  ...['GET /api/v1/access', 'POST /api/v1/access', 'DELETE /api/v1/access'],
];

test('what each role may change is this, and what nobody listed is a keeper’s', () => {
  const changing = operations.filter((one) => !one.startsWith('GET ') && !forAnybody.includes(one));
  const roleOf = (operation: string) => neededRole(...(operation.split(' ') as [string, string]));
  const of = (role: Role) =>
    changing
      .filter((one) => roleOf(one) === role)
      .map((one) => one.replace('/api/v1', ''))
      .toSorted();
  expect(of('reader')).toEqual([
    'POST /charge',
    'POST /count',
    'POST /distributions',
    'POST /explain',
    'POST /imports/preview',
    'POST /screen',
    'POST /substitute',
    'POST /weighing',
  ]);
  expect(of('author')).toEqual([
    'DELETE /melts/:id',
    'DELETE /melts/:id/attachments/:attachment',
    'PATCH /shortlists/:id',
    'POST /charge-sheets',
    'POST /melts',
    'POST /melts/:id/attachments',
    'POST /melts/:id/attachments/:attachment/restore',
    'POST /melts/:id/restore',
    'POST /searches',
    'POST /searches/:id/cancel',
    'POST /searches/:id/pause',
    'POST /searches/:id/resume',
    'POST /shortlists',
    'POST /shortlists/:id/pick',
    'PUT /melts/:id',
    'PUT /searches/:id/schedule',
  ]);
  expect(of('keeper')).toEqual([
    'DELETE /columns/:id',
    'DELETE /imports/:number',
    'DELETE /prices',
    'POST /imports',
    'POST /imports/:number/restore',
    'PUT /columns',
    'PUT /prices',
  ]);
  expect(neededRole('POST', '/api/v1/of-tomorrow')).toBe('keeper');
});

test('what the document of security says of the roles is what is told elsewhere', () => {
  const document = readFileSync(join(import.meta.dirname, '../../../../SECURITY.md'), 'utf8');
  for (const role of roles)
    expect(document).toMatch(new RegExp(`\\| \`${role}\` +\\| ${roleInWords(role)} +\\|`));
});

test('every route but those for anybody refuses who sends no token, and who sends another', async () => {
  expect(operations.length).toBeGreaterThan(60);
  for (const operation of operations) {
    const none = await server.ask(requestTo(operation));
    const wrong = await server.ask({ ...requestTo(operation), headers: bearer(`${tokenOf.keeper}A`) });
    if (forAnybody.includes(operation)) {
      for (const { statusCode } of [none, wrong]) expect([200, 400, 415], operation).toContain(statusCode);
      continue;
    }
    expect(none.statusCode, operation).toBe(401);
    expect(none.headers['www-authenticate'], operation).toBe('Bearer');
    expect(none.json(), operation).toMatchObject({ code: 'access/no-token' });
    expect(wrong.statusCode, operation).toBe(401);
    expect(wrong.json(), operation).toMatchObject({ code: 'access/unknown-token' });
  }
});

test('every route lets in the roles that may, and refuses those below', async () => {
  for (const operation of operations.filter((one) => !forAnybody.includes(one))) {
    const needed = neededRole(...(operation.split(' ') as [string, string])) as Role;
    for (const role of rolesInOrder) {
      const answer = await as(role, requestTo(operation));
      const may = rolesInOrder.indexOf(role) >= rolesInOrder.indexOf(needed);
      const what = `${operation} by a ${role}: ${answer.body.slice(0, 200)}`;
      if (may) expect([401, 403], what).not.toContain(answer.statusCode);
      else expect(answer.json(), what).toMatchObject({ status: 403, code: 'access/role' });
    }
  }
});

test.each([
  '/api/v1/searches/',
  '/api/v1//searches',
  '/API/V1/searches',
  '/api/v1/searches%2f',
  '/api/v1/./searches',
  '/api/v1/../api/v1/searches',
  '/api%2Fv1/searches',
  '/api/v1/searches;x',
  '/%61pi/v1/searches',
])('no other way of writing an address gets past: %s', async (url) => {
  const answer = await server.ask({ url });
  expect([400, 401, 404]).toContain(answer.statusCode);
});

test('methods that a route does not take are no way in either', async () => {
  for (const method of ['HEAD', 'OPTIONS', 'TRACE'] as const) {
    expect((await server.ask({ method: method as 'HEAD', url: '/api/v1/searches' })).statusCode).toBe(401);
  }
  expect((await as('reader', { method: 'HEAD', url: '/api/v1/searches' })).statusCode).toBe(200);
});

test('a token may stand in the header or in the cookie; the header counts', async () => {
  const url = '/api/v1/access';
  const cookie = (token: string) => ({ cookie: `a=b; tiegel-token=${token}; c=d` });
  const named = async (headers: Record<string, string>) => (await server.ask({ url, headers })).json().name;
  expect(await named(bearer(tokenOf.author))).toBe('Aut');
  expect(await named({ authorization: `bearer ${tokenOf.author}` })).toBe('Aut');
  expect(await named(cookie(tokenOf.reader))).toBe('Rea');
  expect(await named({ ...cookie(tokenOf.reader), ...bearer(tokenOf.keeper) })).toBe('Kee');
  expect(await named({ authorization: `Basic ${tokenOf.author}` })).toBeNull();
  expect(await named({ cookie: `other-tiegel-token=${tokenOf.author}` })).toBeNull();
  expect(await named({ cookie: ';;=;tiegel-token' })).toBeNull();
});

test('a browser signs in and out: no script and no other site gets at its token', async () => {
  const url = '/api/v1/access';
  const wrong = await server.ask({ method: 'POST', url, payload: { token: 'guessed' } });
  expect(wrong.statusCode).toBe(401);
  expect(wrong.json()).toMatchObject({ code: 'access/unknown-token' });
  expect(wrong.headers['set-cookie']).toBeUndefined();

  const signedIn = await server.ask({ method: 'POST', url, payload: { token: ` ${tokenOf.author}\n` } });
  expect(signedIn.json()).toEqual({ asked: true, name: 'Aut', role: 'author' });
  expect(signedIn.headers['set-cookie']).toBe(
    `tiegel-token=${tokenOf.author}; Path=/; HttpOnly; SameSite=Strict; Max-Age=2592000`,
  );
  const behindProxy = await server.ask({
    ...{ method: 'POST', url, payload: { token: tokenOf.author } },
    headers: { 'x-forwarded-proto': 'https' },
  });
  expect(behindProxy.headers['set-cookie']).toMatch(/^__Host-tiegel-token=.*; Path=\/; .*; Secure$/);

  const out = await server.ask({
    method: 'DELETE',
    url,
    headers: { cookie: `tiegel-token=${tokenOf.author}` },
  });
  expect(out.headers['set-cookie']).toMatch(/^tiegel-token=; .*Max-Age=0$/);
  expect(out.json()).toEqual({ asked: true, name: null, role: null });
});

test('a token ends at once when it is withdrawn', async () => {
  const { token } = tokens.give('Guest', 'reader');
  const asked = () => server.ask({ url: '/api/v1/searches', headers: bearer(token) });
  expect((await asked()).statusCode).toBe(200);
  tokens.withdraw('Guest');
  expect((await asked()).json()).toMatchObject({ code: 'access/unknown-token' });
});

test('no answer is kept on its way or in the browser, where another may sit next', async () => {
  const cacheOf = async (request: Promise<{ headers: Record<string, unknown> }>) =>
    (await request).headers['cache-control'];
  const access = { url: '/api/v1/access', payload: { token: tokenOf.reader } };
  expect(await cacheOf(server.ask({ ...access, method: 'POST' }))).toBe('no-store');
  expect(await cacheOf(server.ask({ url: '/api/v1/access', method: 'DELETE' }))).toBe('no-store');
  expect(await cacheOf(as('reader', { url: '/api/v1/searches' }))).toBe('no-store');
  const write = async (url: string, payload: object) =>
    (await as('author', { method: 'POST', url, payload })).json();
  const sheet = { composition: 'Ni', mass: 50, resolution: 0.1 };
  const { number: charge } = await write('/api/v1/charge-sheets', sheet);
  const melt = {
    charge,
    date: '2026-11-30',
    process: 'arc melting',
    weighed: [{ material: 'Ni', mass: 50 }],
  };
  const { id } = await write('/api/v1/melts', melt);
  const attached = await as('author', {
    ...{ method: 'POST', url: `/api/v1/melts/${id}/attachments?name=scan.xy` },
    ...{ payload: Buffer.from('20 1\n'), headers: { 'content-type': 'application/octet-stream' } },
  });
  const file = await as('reader', { url: attached.headers.location as string });
  expect([file.body, file.headers['cache-control']]).toEqual(['20 1\n', 'no-store']);
});

test('what is written on a shortlist bears the name of the token, whatever name was sent', async () => {
  const url = '/api/v1/shortlists';
  const begun = await as('author', { method: 'POST', url, payload: { name: 'Pumps', by: 'Somebody' } });
  const { id, sequence }: Shortlist = begun.json();
  const act = { kind: 'add', entry: 'Co50Ni50' };
  const changes = [{ key: 'a key of its own', by: 'Somebody', seen: sequence, act }];
  await as('keeper', { method: 'PATCH', url: `${url}/${id}`, payload: { changes } });
  const { history } = (await as('reader', { url: `${url}/${id}` })).json();
  expect((history as { by: string }[]).map(({ by }) => by)).toEqual(['Aut', 'Kee']);
});

test('a version of a melt and a saved charge sheet name whose token wrote them', async () => {
  const { number: charge } = (
    await as('keeper', {
      ...{ method: 'POST', url: '/api/v1/charge-sheets' },
      payload: { composition: 'Ni', mass: 50, resolution: 0.1 },
    })
  ).json();
  const sheet = (await as('reader', { url: `/api/v1/charge-sheets/${charge}` })).json();
  expect(sheet.by).toBe('Kee');
  const melt = {
    charge,
    date: '2026-11-30',
    process: 'arc melting',
    weighed: [{ material: 'Ni', mass: 50 }],
  };
  const begun = (await as('author', { method: 'POST', url: '/api/v1/melts', payload: melt })).json();
  const url = `/api/v1/melts/${begun.id}`;
  const told = async () => (await as('reader', { url })).json().history;
  const [{ entry }] = await told();
  await as('keeper', { method: 'PUT', url, payload: { ...entry, hardness: 90, version: 1 } });
  const history = await told();
  expect((history as { by: string }[]).map(({ by }) => by)).toEqual(['Kee', 'Aut']);
});

test('pages come to anybody, for they hold nothing and ask for the token', async () => {
  const page = await server.ask({ url: '/searches', headers: { accept: 'text/html' } });
  // 503: these tests build no pages.
  expect(page.statusCode).toBe(503);
});

test('a server that asks for no token says so, and takes no notice of one', async () => {
  const open = await testServer();
  const url = '/api/v1/access';
  for (const request of [{ url }, { method: 'POST' as const, url, payload: { token: 'any' } }]) {
    const answer = await open.ask(request);
    expect(answer.json()).toEqual({ asked: false, name: null, role: null });
    expect(answer.headers['set-cookie']).toBeUndefined();
  }
  expect((await open.ask({ url: '/api/v1/searches', headers: bearer('wrong') })).statusCode).toBe(200);
  await open.close();
});
