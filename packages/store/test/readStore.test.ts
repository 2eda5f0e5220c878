import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { ProblemError } from '@tiegel/contract';
import Database from 'better-sqlite3';
import { afterEach, beforeEach, expect, onTestFinished, test } from 'vitest';
import { type JoinedStore, readStore } from '../src/index.ts';
import { columns, freshFile, openTestStore } from './fixtures/files.ts';
import { keptSearch } from './fixtures/searches.ts';

const at = '2026-11-29T08:15:00.000Z';

// Rights of files do not hold for root, so what the system would say is given.
function read(file: string, mayWrite: (place: string) => boolean = () => false): JoinedStore {
  const store = readStore({ file, columns, mayWrite });
  onTestFinished(() => store.close());
  return store;
}

function faultOf(act: () => unknown) {
  try {
    act();
  } catch (error) {
    if (error instanceof ProblemError) return error.faults[0]!;
    throw error;
  }
  return null;
}

/** A file at rest, with a melt and a search in it. */
function kept(): { file: string; id: string } {
  const file = freshFile();
  const store = openTestStore(file);
  store.melts.create({ name: 'a melt' }, at);
  const { id } = keptSearch(store);
  store.close();
  return { file, id };
}

const beside = (file: string) => readdirSync(dirname(file)).sort();

/** Copies are made in a folder that no other test uses. */
const { TMPDIR } = process.env;
beforeEach(() => {
  process.env.TMPDIR = mkdtempSync(join(tmpdir(), 'store-copies-'));
});
afterEach(() => {
  rmSync(tmpdir(), { recursive: true });
  if (TMPDIR === undefined) delete process.env.TMPDIR;
  else process.env.TMPDIR = TMPDIR;
});
const copies = () => readdirSync(tmpdir()).filter((name) => name.startsWith('tiegel-'));

test.each([
  ['file', (place: string) => !place.endsWith('.db')],
  ['folder', (place: string) => place.endsWith('.db')],
])('a database whose %s may not be written is read, and nothing is written there', (_, mayWrite) => {
  const { file, id } = kept();
  const [names, bytes, { mtimeMs }] = [beside(file), readFileSync(file), statSync(file)];
  const store = read(file, mayWrite);
  expect(copies()).toHaveLength(1);
  expect(store.melts.list().map(({ entry }) => entry)).toEqual([{ name: 'a melt' }]);
  expect(store.searches.find(id)).not.toBeNull();
  expect(beside(file)).toEqual(names);
  store.close();
  expect(copies()).toEqual([]);
  expect(readFileSync(file).equals(bytes)).toBe(true);
  expect(statSync(file).mtimeMs).toBe(mtimeMs);
});

test('what people write down is refused there, with the name of the database', () => {
  const { file } = kept();
  const store = read(file);
  const counts = { new: 0, changed: 0, same: 0, refused: 0 };
  const one = { kind: 'pairs', subject: '', name: '', data: [], rows: 0, counts } as const;
  const writes = [
    () => store.melts.create({ name: 'lost' }, at),
    () => store.chargeSheets.save({ mass: 50 }, at),
    () => store.shortlists.create(at),
    () => store.imports.enter(one, at),
  ];
  for (const write of writes)
    expect(faultOf(write)).toMatchObject({
      code: 'store/read-only',
      detail: expect.stringContaining(`The database ${file} may only be read`),
    });
  expect(store.melts.list()).toHaveLength(1);
});

test('one of an older form is read in the form of today, and stays as it is', () => {
  const { file } = kept();
  const more = readStore({ file, columns: [...columns, 'newer'], mayWrite: () => false });
  expect(more.melts.list()).toHaveLength(1);
  more.close();
  const left = new Database(file, { readonly: true });
  expect(left.prepare("select name from pragma_table_info('candidate')").pluck().all()).not.toContain(
    'q_newer',
  );
  left.close();
});

test('a database that another program works on, and one that may be written, are read where they lie', () => {
  const { file } = kept();
  const owner = openTestStore(file);
  expect(beside(file)).toContain('searches.db-wal');
  const beneath = read(file);
  owner.melts.create({ name: 'another' }, at);
  expect(beneath.melts.list()).toHaveLength(2);
  beneath.melts.create({ name: 'a third' }, at);
  expect(owner.melts.list()).toHaveLength(3);
  const usual = kept();
  read(usual.file, () => true).melts.create({ name: 'kept' }, at);
  expect(read(usual.file, () => true).melts.list()).toHaveLength(2);
  expect(copies()).toEqual([]);
});

test('what is no database of ours is refused by its own name, and no copy is left', () => {
  const file = join(dirname(freshFile()), 'searches.db');
  writeFileSync(file, 'Al 26.98\nCr 52.00\n'.repeat(100));
  expect(faultOf(() => read(file))).toMatchObject({
    code: 'store/foreign',
    detail: expect.stringContaining(file),
  });
  expect(copies()).toEqual([]);
});
