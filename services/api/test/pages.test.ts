import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type TestServer, testServer } from './fixtures/testServer.ts';

const folder = mkdtempSync(join(tmpdir(), 'pages-'));
let server: TestServer;
let unbuilt: TestServer;
beforeAll(async () => {
  mkdirSync(join(folder, 'assets'));
  writeFileSync(join(folder, 'index.html'), '<!doctype html><title>pages</title>');
  writeFileSync(join(folder, 'assets/page-4f2a.js'), 'export {};');
  writeFileSync(join(folder, '.built-from'), 'a digest');
  server = await testServer({ pages: folder });
  unbuilt = await testServer();
});
afterAll(async () => {
  await server.close();
  await unbuilt.close();
  rmSync(folder, { recursive: true });
});

const page = { accept: 'text/html,application/xhtml+xml' };

test.each(['/', '/index.html', '/search/abc', '/search/abc/candidate/Al5Ni95?sort=density', '/prices'])(
  'a browser that opens %s gets the pages, and asks for them anew each time',
  async (url) => {
    const answer = await server.ask({ url, headers: page });
    expect(answer.statusCode).toBe(200);
    expect(answer.headers['content-type']).toMatch(/^text\/html/);
    expect(answer.body).toContain('<title>pages</title>');
    expect(answer.headers['cache-control']).toBe('no-cache');
  },
);

test('a file that is named by what it holds is kept for good', async () => {
  const answer = await server.ask({ url: '/assets/page-4f2a.js' });
  expect(answer.headers['content-type']).toMatch(/^(text|application)\/javascript/);
  expect(answer.headers['cache-control']).toBe('public, max-age=31536000, immutable');
});

test.each([
  '/assets/page-0000.js',
  '/.built-from',
  '/../package.json',
  '/%2e%2e/%2e%2e/package.json',
  '/assets',
])('%s is nothing that a program gets', async (url) => {
  const answer = await server.ask({ url });
  expect(answer.statusCode).toBe(404);
  expect(answer.json()).toMatchObject({ code: 'request/unknown-route' });
});

test('an address under /api that nothing answers is no page, even for a browser', async () => {
  const answer = await server.ask({ url: '/api/v1/serches', headers: page });
  expect(answer.statusCode).toBe(404);
  expect(answer.headers['content-type']).toBe('application/problem+json');
});

test('where the pages are not built, a browser is told so and what to do', async () => {
  const answer = await unbuilt.ask({ url: '/', headers: page });
  expect(answer.statusCode).toBe(503);
  expect(answer.body).toContain('npm start');
});
