import { afterAll, beforeAll, expect, test } from 'vitest';
import { type TestServer, testServer } from '../fixtures/testServer.ts';

let closed: TestServer;
let open: TestServer;
let named: TestServer;
beforeAll(async () => {
  closed = await testServer();
  open = await testServer({ openNetwork: true, hostNames: null });
  named = await testServer({ openNetwork: true, hostNames: ['alloys.lab.example', '[fd00::5]'] });
});
afterAll(async () => {
  await closed.close();
  await open.close();
  await named.close();
});

const screen = { method: 'POST', url: '/api/v1/screen', payload: { compositions: ['CoNi'] } } as const;

test.each(['localhost', 'localhost:4270', '127.0.0.1:4270', '[::1]:4270', 'LOCALHOST:8080', '127.0.0.2'])(
  'a request to %s is a request to this server',
  async (host) => {
    expect((await closed.ask({ url: '/health', headers: { host } })).statusCode).toBe(200);
  },
);

// What a browser sends after a page's own name was made to resolve to 127.0.0.1 (DNS rebinding).
test.each([
  'attacker.example',
  'attacker.example:4270',
  'localhost.attacker.example',
  '127.0.0.1.attacker.example',
  '10.0.0.1',
])('a request to "%s" is refused, whatever it asks for', async (host) => {
  for (const request of [screen, { url: '/health' }, { url: '/' }, { url: '/api/v1/nothing' }]) {
    const answer = await closed.ask({ ...request, headers: { host } });
    expect(answer.statusCode).toBe(403);
    expect(answer.json()).toMatchObject({ code: 'access/foreign-host' });
  }
});

test.each([
  { origin: 'http://attacker.example' },
  { origin: 'http://localhost:3000' },
  { origin: 'null' },
  { origin: 'other://localhost:4270' },
  { 'sec-fetch-site': 'cross-site' },
  { 'sec-fetch-site': 'same-site' },
])('a change that another page asks for is refused: %o', async (headers) => {
  const answer = await closed.ask({ ...screen, headers });
  expect(answer.statusCode).toBe(403);
  expect(answer.json()).toMatchObject({ code: 'access/foreign-page' });
});

test.each([
  {},
  { origin: 'http://localhost:4270' },
  { origin: 'http://localhost:4270', 'sec-fetch-site': 'same-origin' },
  { 'sec-fetch-site': 'none' },
])('a change that a page of this server or a program asks for is made: %o', async (headers) => {
  expect((await closed.ask({ ...screen, headers })).statusCode).toBe(200);
});

test('no answer invites other sites to read it', async () => {
  const answer = await closed.ask({ url: '/health', headers: { origin: 'http://attacker.example' } });
  expect(Object.keys(answer.headers).filter((name) => name.startsWith('access-control'))).toEqual([]);
});

test('an open network has names that nobody knows here, and is told of as such', async () => {
  const answer = await open.ask({ url: '/api/v1/health', headers: { host: 'alloys.lab.example' } });
  expect(answer.json()).toMatchObject({ openNetwork: true });
  expect((await closed.ask({ url: '/health' })).json()).toMatchObject({ openNetwork: false });
});

test('an open network whose names are given is called by these and those of this computer, by no other', async () => {
  const statusFor = async (host: string) =>
    (await named.ask({ url: '/health', headers: { host } })).statusCode;
  for (const host of ['alloys.lab.example', 'Alloys.Lab.example:4270', '[fd00::5]:4270', '127.0.0.1:4270']) {
    expect(await statusFor(host), host).toBe(200);
  }
  for (const host of [
    'attacker.example:4270',
    'x.alloys.lab.example',
    'alloys.lab.example.x',
    '[fd00::5]:x',
  ]) {
    expect(await statusFor(host), host).toBe(403);
  }
});

test('an open network still refuses what a page of another site asks for', async () => {
  const headers = { host: 'alloys.lab.example', origin: 'http://attacker.example' };
  expect((await open.ask({ ...screen, headers })).statusCode).toBe(403);
});

test('a browser may take scripts, styles and data from this server alone', async () => {
  const { headers } = await closed.ask({ url: '/', headers: { accept: 'text/html' } });
  expect(headers['content-security-policy']).toMatch(/^default-src 'self';/);
  expect(headers['content-security-policy']).not.toMatch(/unsafe|\*|https?:/);
  expect(headers).toMatchObject({ 'x-content-type-options': 'nosniff', 'referrer-policy': 'no-referrer' });
});
