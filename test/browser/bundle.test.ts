import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { beforeAll, expect, test } from 'vitest';
import { builtPages } from './builtPages.ts';

const dist = join(import.meta.dirname, '../../services/web/dist');
beforeAll(builtPages);

const read = (kind: string) =>
  readdirSync(join(dist, 'assets'))
    .filter((name) => name.endsWith(kind))
    .map((name) => readFileSync(join(dist, 'assets', name), 'utf8'));

test('the script of the first page stays under 250 kB, compressed', () => {
  const page = readFileSync(join(dist, 'index.html'), 'utf8');
  // What the page names (its script, and what that imports at once); pages opened later are fetched later.
  const named = [...page.matchAll(/\/(assets\/[^"]+\.js)"/g)].map(([, path]) => path!);
  const scripts = named.map((path) => readFileSync(join(dist, path), 'utf8'));
  expect(scripts.length).toBeGreaterThan(0);
  const bytes = scripts.reduce((sum, text) => sum + gzipSync(text).length, 0);
  expect(bytes).toBeLessThan(250_000);
});

test('the page holds no script and no style of its own, which the content security policy would refuse', () => {
  const page = readFileSync(join(dist, 'index.html'), 'utf8');
  expect(page).not.toMatch(/<script(?![^>]*\ssrc=)/);
  expect(page).not.toMatch(/<style|\sstyle=|\son\w+=/);
});

test('no script of the first page makes a schema: to make one tries to generate code, which the policy refuses and reports', () => {
  const page = readFileSync(join(dist, 'index.html'), 'utf8');
  const named = [...page.matchAll(/\/(assets\/[^"]+\.js)"/g)].map(([, path]) => path!);
  const scripts = named.map((path) => readFileSync(join(dist, path), 'utf8'));
  expect(scripts.length).toBeGreaterThan(0);
  expect(scripts.filter((text) => /\bjitless\b/.test(text))).toEqual([]);
});

test('the first style sheet is the one that orders the layers, or what is printed loses to what is on the screen', () => {
  const page = readFileSync(join(dist, 'index.html'), 'utf8');
  const [, first] = /<link rel="stylesheet"[^>]*"\/(assets\/[^"]+\.css)"/.exec(page)!;
  const layers = [...readFileSync(join(dist, first!), 'utf8').matchAll(/@layer (\w+)\{/g)].map(
    ([, name]) => name,
  );
  expect([...new Set(layers)]).toEqual(['tokens', 'ground', 'parts', 'pages', 'print', 'always']);
});

test('style sheets name no file of another host', () => {
  const sheets = read('.css');
  expect(sheets.length).toBeGreaterThan(0);
  expect(sheets.filter((text) => /url\(|@import/.test(text))).toEqual([]);
});
