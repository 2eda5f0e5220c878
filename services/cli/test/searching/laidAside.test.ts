import { join } from 'node:path';
import { embeddedQueue } from '@tiegel/queue';
import { candidateColumns, keptCandidates, openSearches } from '@tiegel/search';
import { joinStore, openStore } from '@tiegel/store';
import { afterAll, expect, test } from 'vitest';
import { temporaryFolder } from '../../../../test/fixtures/temporaryFolder.ts';
import { jsonOf, tiegel } from '../../../../test/fixtures/tiegel.ts';
import { until } from '../../../../test/fixtures/until.ts';
import { threadFile } from '../../src/searching/threadFile.ts';

const folder = await temporaryFolder('aside');
afterAll(folder.remove);

const small = {
  elements: { pool: ['Co', 'Cr', 'Fe', 'Ni'] },
  components: 3,
  fractions: { step: 10 },
  rank: [{ quantity: 'sizeMismatch', prefer: 'low' }],
  keep: 10,
};
const endless = {
  ...small,
  elements: { pool: ['Al', 'Co', 'Cr', 'Cu', 'Fe', 'Mn', 'Mo', 'Ni', 'V', 'Ti'] },
  components: 6,
  fractions: { step: 1 },
  rank: [{ quantity: 'omega', prefer: 'high' }],
};

const columns = candidateColumns;

/** A search of a program that ended before it was done, in a database of its own. */
async function leftBehind(name: string): Promise<{ id: string; file: string; where: string[] }> {
  const file = join(folder.path, name);
  const store = openStore({ file, columns });
  const queue = embeddedQueue({ threadFile, threads: 1 });
  const searches = await openSearches({ store, queue });
  const { id } = await searches.submit(small);
  await searches.close();
  await queue.close();
  store.close();
  return { id, file, where: ['--database', file] };
}

function statesIn(file: string): Record<string, string> {
  const store = joinStore({ file, columns });
  try {
    return Object.fromEntries(
      keptCandidates(store)
        .list()
        .map(({ id, state }) => [id, state]),
    );
  } finally {
    store.close();
  }
}

test('a signal pauses a search of a database and says how to go on; it can be cancelled there', async () => {
  const { id: other, file, where } = await leftBehind('signal.sqlite');
  const ending = new AbortController();
  const input = JSON.stringify(endless);
  const brokenOff = tiegel(['search', '-', ...where], { input, signal: ending.signal });
  let id = '';
  await until('the search is worked on', () => {
    id = Object.keys(statesIn(file)).find((one) => one !== other) ?? '';
    return statesIn(file)[id] === 'running';
  });
  ending.abort();
  const { code, out, error } = await brokenOff;
  expect({ code, out }).toEqual({ code: 128 + 15, out: '' });
  expect(error).toMatch(
    new RegExp(`The search ${id} is paused: [\\d,]+ of [\\d,]+ points are kept in ${file}`),
  );
  expect(error).toContain(`"searches resume ${id} --database ${file}"`);
  expect(statesIn(file)[id]).toBe('paused');
  expect(await tiegel(['results', 'show', id, ...where])).toMatchObject({
    code: 1,
    error: expect.stringContaining('searches resume'),
  });
  expect(await jsonOf(['searches', 'cancel', id, ...where])).toMatchObject({ id, state: 'cancelled' });
  expect(await tiegel(['searches', 'resume', id, ...where])).toMatchObject({
    code: 1,
    error: expect.stringContaining('[search/not-possible]'),
  });
  expect(await tiegel(['results', 'show', id, ...where])).toMatchObject({
    code: 1,
    error: expect.stringMatching(/is cancelled.*\n.*anew/),
  });
});

test('a search whose program was killed is told as broken off, and goes on where it stopped', async () => {
  const file = join(folder.path, 'killed.sqlite');
  const where = ['--database', file];
  const ending = new AbortController();
  const killed = tiegel(['search', '-', ...where], {
    ...{ input: JSON.stringify(endless), signal: ending.signal, signalName: 'SIGKILL' },
  });
  let id = '';
  await until('the search is worked on', () => {
    id = Object.keys(statesIn(file))[0] ?? '';
    return statesIn(file)[id] === 'running';
  });
  ending.abort();
  expect((await killed).code).toBeNull();
  expect(await jsonOf(['results', 'list', ...where])).toMatchObject([
    { id, state: 'paused', reason: expect.stringContaining(`"searches resume ${id} --database FILE"`) },
  ]);
  expect((await tiegel(['results', 'list', ...where])).out).toMatch(
    /It was broken off, and no program works/,
  );

  const again = new AbortController();
  const resumed = tiegel(['searches', 'resume', id, ...where], { signal: again.signal });
  await until('it is worked on again', () => statesIn(file)[id] === 'running');
  again.abort();
  expect((await resumed).error).toContain(`The search ${id} is paused`);
});

test('a search works on no other that lies unfinished in its database, until that is resumed', async () => {
  const { id, file, where } = await leftBehind('unfinished.sqlite');
  const found = await jsonOf(['search', '-', ...where], { input: JSON.stringify(small) });
  expect(statesIn(file)[id]).toBe('paused');
  const resumed = await jsonOf(['searches', 'resume', id, ...where]);
  expect(resumed).toMatchObject({ counts: found.counts, candidates: found.candidates });
  expect(statesIn(file)[id]).toBe('done');
});

test.each([
  [['resume', 'none', '--database', 'nowhere.sqlite'], 'file/unreadable'],
  [['cancel', 'none', '--database', 'nowhere.sqlite'], 'file/unreadable'],
  [['resume', 'none', '--database', 'x', '--server', 'http://127.0.0.1:1'], 'command/usage'],
  [['pause', 'none', '--database', 'x'], 'command/usage'],
])('what is wrong is told with exit 1: searches %j', async (words, code) => {
  expect(await tiegel(['searches', ...words])).toMatchObject({
    code: 1,
    error: expect.stringContaining(`[${code}]`),
  });
});
