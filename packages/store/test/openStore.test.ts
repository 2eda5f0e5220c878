import { execFileSync } from 'node:child_process';
import {
  chmodSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { dirname, join } from 'node:path';
import { ProblemError } from '@tiegel/contract';
import Database from 'better-sqlite3';
import { expect, test } from 'vitest';
import { openStore } from '../src/index.ts';
import { batchOf } from './fixtures/candidates.ts';
import { columns, freshFile, openTestStore } from './fixtures/files.ts';
import { keptSearch } from './fixtures/searches.ts';

function codeOf(act: () => unknown): string {
  try {
    act();
  } catch (error) {
    if (error instanceof ProblemError) return error.faults[0]!.code;
    throw error;
  }
  return 'nothing was thrown';
}

test('what was stored is there after closing and opening', () => {
  const file = freshFile();
  const first = openStore({ file, columns });
  const { id } = keptSearch(first);
  first.close();
  expect(openTestStore(file).searches.find(id)?.question).toBe('three of Al Cr Fe');
});

test('the folder of a new file is made', () => {
  const file = join(dirname(freshFile()), 'deep', 'er', 'searches.db');
  openTestStore(file);
  expect(existsSync(file)).toBe(true);
});

test('a folder that cannot be made is told at once, also where nobody can make one', () => {
  const open = `
    import { openStore } from '${join(import.meta.dirname, '../src/index.ts')}';
    try { openStore({ file: '/proc/no/such/searches.db', columns: [] }); }
    catch (error) { console.log(error.faults[0].code); }`;
  // In a process of its own, for one that asks for ever listens to nobody.
  const told = execFileSync(process.execPath, ['--input-type=module', '-e', open], {
    ...{ timeout: 20_000, killSignal: 'SIGKILL', encoding: 'utf8' },
  });
  expect(told).toBe('store/unreachable\n');
});

test('what is made is for its user alone, and what was there keeps its rights', () => {
  const rights = (path: string) => (statSync(path).mode & 0o777).toString(8);
  const folder = join(dirname(freshFile()), 'data');
  const file = join(folder, 'searches.db');
  const first = openStore({ file, columns });
  keptSearch(first);
  const beside = readdirSync(folder);
  expect(beside.length).toBeGreaterThanOrEqual(4);
  for (const name of beside) expect(rights(join(folder, name)), name).toBe('600');
  expect(rights(folder)).toBe('700');
  first.close();

  chmodSync(folder, 0o750);
  chmodSync(file, 0o640);
  openTestStore(file);
  expect([rights(folder), rights(file)]).toEqual(['750', '640']);
});

test('a second store on the same file is refused while the first is open', () => {
  const file = freshFile();
  const first = openStore({ file, columns });
  expect(codeOf(() => openStore({ file, columns }))).toBe('store/in-use');
  first.close();
  openTestStore(file);
});

test('another process that has the file open is refused too, and its death frees the file', () => {
  const file = freshFile();
  openTestStore(file).close();
  // The other process takes the lock and is killed by the signal it sends itself, with no chance to tidy up.
  const other = `
    import Database from 'better-sqlite3';
    new Database(${JSON.stringify(`${file}-owner`)}).exec('begin exclusive');
    process.kill(process.pid, 'SIGKILL');`;
  const options = { cwd: import.meta.dirname, stdio: 'ignore' } as const;
  expect(() => execFileSync(process.execPath, ['--input-type=module', '-e', other], options)).toThrow();
  openTestStore(file);
});

test('a file that is no database is refused and left as it is', () => {
  const file = freshFile();
  writeFileSync(file, 'Al 26.98\nCr 52.00\n'.repeat(100));
  expect(codeOf(() => openStore({ file, columns }))).toBe('store/foreign');
  expect(readFileSync(file, 'utf8').startsWith('Al 26.98')).toBe(true);
});

test('the database of another program is refused and left as it is', () => {
  const file = freshFile();
  const other = new Database(file);
  other.exec('create table recipe (name text)');
  other.close();
  const before = readFileSync(file);
  expect(codeOf(() => openStore({ file, columns }))).toBe('store/foreign');
  expect(readFileSync(file).equals(before)).toBe(true);
});

test('a database of a later release is refused', () => {
  const file = freshFile();
  openTestStore(file).close();
  const later = new Database(file);
  later.pragma('user_version = 999');
  later.close();
  expect(codeOf(() => openStore({ file, columns }))).toBe('store/newer');
});

test('a folder where the file should be is named as unreachable', () => {
  const file = freshFile();
  mkdirSync(file);
  expect(codeOf(() => openStore({ file, columns }))).toBe('store/unreachable');
});

test('a file where the folder should be is named as unreachable', () => {
  const folder = freshFile();
  writeFileSync(folder, '');
  expect(codeOf(() => openStore({ file: join(folder, 'searches.db'), columns }))).toBe('store/unreachable');
});

test('a damaged database is named as damaged', () => {
  const file = freshFile();
  const store = openTestStore(file);
  for (let count = 0; count < 200; count += 1) keptSearch(store);
  store.close();
  const bytes = readFileSync(file);
  // Everything but the page of the schema is overwritten.
  writeFileSync(file, bytes.fill(0xa5, 3 * 4096));
  expect(
    codeOf(() => {
      const damaged = openStore({ file, columns });
      try {
        damaged.searches.list();
      } finally {
        damaged.close();
      }
    }),
  ).toBe('store/damaged');
});

test('a store without a file works in a temporary one that goes at close', () => {
  const store = openStore({ file: null, columns });
  expect(store.searches.find(keptSearch(store).id)).not.toBeNull();
  store.close();
  const other = openStore({ file: null, columns });
  expect(other.searches.list()).toEqual([]);
  other.close();
});

test('a full disk is told, and what was stored before stays whole', () => {
  const file = freshFile();
  const store = openTestStore(file, { maximumBytes: 200_000 });
  const { id, number } = keptSearch(store, 2);
  const progress = {
    counts: { systems: 1, points: 18, passed: 0, passedEach: [], outside: {} },
    activeSeconds: 1,
  };
  expect(codeOf(() => store.ledger.take(number, 0, new Uint8Array(300_000), progress))).toBe('store/full');
  expect(store.ledger.unfinishedCount(number)).toBe(2);
  expect(store.searches.find(id)?.counts.points).toBe(0);
  expect(store.ledger.take(number, 0, new Uint8Array(30), progress)).toBe(true);
});

test('another program that keeps the file locked is told', () => {
  const file = freshFile();
  const store = openTestStore(file, { busyTimeoutMs: 10 });
  const { number } = keptSearch(store);
  const other = new Database(file);
  other.exec('begin immediate');
  expect(codeOf(() => store.searches.change(number, { state: 'running' }))).toBe('store/busy');
  other.close();
  store.searches.change(number, { state: 'running' });
});

test('a search that refers to nothing is told as a failure of the store', () => {
  const store = openTestStore();
  expect(
    codeOf(() =>
      store.candidates.insert(
        77,
        batchOf([{ rank: 1, symbols: ['Al'], parts: [1], score: 1, quantities: {} }]),
      ),
    ),
  ).toBe('store/failed');
});
