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

test('the first style sheet orders the layers, or what is printed loses to what is on the screen', () => {
  const page = readFileSync(join(dist, 'index.html'), 'utf8');
  const [, first] = /<link rel="stylesheet"[^>]*"\/([^"]+\.css)"/.exec(page)!;
  const [, order] = /^@layer ([\w, ]+);\s*$/.exec(readFileSync(join(dist, first!), 'utf8'))!;
  expect(order!.split(', ')).toEqual(['tokens', 'ground', 'parts', 'pages', 'print', 'always']);
});

test('no style sheet fills a layer that has no place in the order', () => {
  const filled = read('.css').flatMap((text) => [...text.matchAll(/@layer ([\w, ]+)[{;]/g)]);
  const names = new Set(filled.flatMap(([, list]) => list!.split(',').map((name) => name.trim())));
  expect(names).toEqual(new Set(['tokens', 'ground', 'parts', 'pages', 'print', 'always']));
});

test('style sheets name no file of another host', () => {
  const sheets = read('.css');
  expect(sheets.length).toBeGreaterThan(0);
  expect(sheets.filter((text) => /url\(|@import/.test(text))).toEqual([]);
});
