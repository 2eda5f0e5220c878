import { execFileSync } from 'node:child_process';
import { lstatSync, mkdirSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { Readable } from 'node:stream';
import { afterAll, expect, test } from 'vitest';
import { temporaryFolder } from '../../../../test/fixtures/temporaryFolder.ts';
import { refuseExisting, writeInto } from '../../src/output/writeInto.ts';
import { faultsOf } from '../faultsOf.ts';

const folder = await temporaryFolder('into');
afterAll(folder.remove);

const overwrite = { overwrite: true };
const content = () => Readable.from([Buffer.from('new')], { objectMode: false });

test('what is there and no file is never replaced, and the way out is told before anything is worked out', async () => {
  const pipe = join(folder.path, 'pipe');
  execFileSync('mkfifo', [pipe]);
  for (const options of [overwrite, {}]) {
    expect(await faultsOf(() => refuseExisting(pipe, options))).toEqual(['file/not-replaceable']);
    expect(await faultsOf(() => writeInto(pipe, content(), options))).toEqual(['file/not-replaceable']);
  }
  expect(() => refuseExisting(pipe, overwrite)).toThrow(/a named pipe/);
  expect(lstatSync(pipe).isFIFO()).toBe(true);
  const byLink = join(folder.path, 'to-pipe');
  symlinkSync(pipe, byLink);
  expect(await faultsOf(() => writeInto(byLink, content(), overwrite))).toEqual(['file/not-replaceable']);
  expect(await faultsOf(() => writeInto(folder.path, content(), overwrite))).toEqual(['file/unwritable']);
});

test('a database is never replaced', async () => {
  const file = join(folder.path, 'lab.sqlite');
  const database = Buffer.from('SQLite format 3\0and all that a laboratory has', 'latin1');
  writeFileSync(file, database);
  for (const options of [overwrite, {}])
    expect(await faultsOf(() => writeInto(file, content(), options))).toEqual(['file/not-replaceable']);
  expect(() => refuseExisting(file, overwrite)).toThrow(/is a database/);
  expect(readFileSync(file).equals(database)).toBe(true);
});

test('a link stays, and the file that it leads to is replaced in its own folder', async () => {
  const place = join(folder.path, 'elsewhere');
  mkdirSync(place);
  const file = join(place, 'kept.csv');
  writeFileSync(file, 'old');
  const link = join(folder.path, 'link.csv');
  symlinkSync(join('elsewhere', 'kept.csv'), link);
  expect(await faultsOf(() => writeInto(link, content()))).toEqual(['file/exists']);
  expect(await writeInto(link, content(), overwrite)).toBe(3);
  expect(lstatSync(link).isSymbolicLink()).toBe(true);
  expect(readFileSync(file, 'utf8')).toBe('new');
  expect(readdirSync(place)).toEqual(['kept.csv']);
});

test('a link to nothing is left as it is', async () => {
  const link = join(folder.path, 'nowhere.csv');
  symlinkSync(join(folder.path, 'gone', 'file.csv'), link);
  expect(await faultsOf(() => writeInto(link, content(), overwrite))).toEqual(['file/unwritable']);
  expect(lstatSync(link).isSymbolicLink()).toBe(true);
});
