import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { SearchView } from '@tiegel/contract';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { freePort } from '../fixtures/freePort.ts';
import { type RunningApi, startApi } from '../fixtures/processes.ts';
import { temporaryFolder } from '../fixtures/temporaryFolder.ts';
import { jsonOf, tiegel } from '../fixtures/tiegel.ts';
import { until } from '../fixtures/until.ts';

const specification = readFileSync(
  new URL('../fixtures/searches/impeller-bounds-each-system.spec.json', import.meta.url),
  'utf8',
);
const ownPrices = fileURLToPath(new URL('../fixtures/independent/prices.csv', import.meta.url));

let folder: Awaited<ReturnType<typeof temporaryFolder>>;
let api: RunningApi;
let search: SearchView;

beforeAll(async () => {
  folder = await temporaryFolder('again');
  api = await startApi({ dataFolder: join(folder.path, 'data'), port: await freePort(), workers: 1 });
  const headers = { 'content-type': 'application/json' };
  const answer = await fetch(`${api.url}/api/v1/searches`, { method: 'POST', headers, body: specification });
  const { id } = (await answer.json()) as { id: string };
  search = await until('the search is done', async () => {
    const view = (await (await fetch(`${api.url}/api/v1/searches/${id}`)).json()) as SearchView;
    return view.state === 'done' ? view : null;
  });
});
afterAll(async () => {
  await api.stop();
  await folder.remove();
});

/** Exports over HTTP into a file. */
async function exported(parameters: string, change = (text: string) => text): Promise<string> {
  const answer = await fetch(`${api.url}/api/v1/searches/${search.id}/export?${parameters}`);
  const file = join(folder.path, parameters.replaceAll(/\W/g, '-'));
  writeFileSync(file, change(await answer.text()));
  return file;
}

test('an export of either form, whole, filtered or in another order, finds the same rows again', async () => {
  for (const parameters of [
    'format=csv',
    'format=ndjson',
    'format=csv&order=density&direction=desc&max.cost=11.5&without=Cu',
    'format=ndjson&has=Mn&min.density=7',
  ]) {
    const again = await jsonOf(['search', '--again', await exported(parameters)]);
    expect(again).toMatchObject({ same: true, differing: 0, differences: [] });
    expect(again.rows).toBeGreaterThan(0);
    expect(again.counts.is).toEqual(search.counts);
    expect(again.dataVersion).toEqual({ was: search.dataVersion, is: search.dataVersion });
  }
});

test('an export of when names could hold separators of lines runs again', async () => {
  const change = (text: string) => text.replaceAll(search.name, 'two\u2028lines\u2029of one name');
  for (const parameters of ['format=csv', 'format=ndjson']) {
    const file = await exported(parameters, change);
    expect(readFileSync(file, 'utf8')).toContain('two\u2028lines');
    expect(await jsonOf(['search', '--again', file])).toMatchObject({ same: true, differing: 0 });
  }
});

test('a row that somebody changed is found, and is a fault of nobody’s data', async () => {
  const change = (text: string) => text.replace(/^(\{"rank":3,.*"score":)([\d.e-]+)/m, '$19.5');
  const { code, out, error } = await tiegel(['search', '--again', await exported('format=ndjson', change)]);
  expect(code).toBe(2);
  expect(out).toMatch(/1 of \d+ rows differ; the counts are the same/);
  expect(out).toMatch(/row 3, score: was 9\.5, is \d/);
  expect(error).toContain('[export/not-reproduced]');
});

test('with other prices the rows differ, and it is said why', async () => {
  const words = ['search', '--again', await exported('format=csv'), '--prices', ownPrices];
  const { code, error } = await tiegel(words);
  expect(code).toBe(1);
  expect(error).toContain('neither is the data (elements, pairs or prices)');
  expect(error).toContain('[export/other-versions]');
});
