import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fault } from '@tiegel/contract/terms';
import { afterAll, expect, test } from 'vitest';
import { temporaryFolder } from '../../../../test/fixtures/temporaryFolder.ts';
import { alloyArguments, alloyLines, readAlloys } from '../../src/input/readAlloys.ts';
import { readJson } from '../../src/input/readJson.ts';
import { placeOf, readText } from '../../src/input/readText.ts';
import { workerCount } from '../../src/input/workerCount.ts';
import { faultsOf } from '../faultsOf.ts';

const folder = await temporaryFolder('input');
afterAll(folder.remove);

function file(name: string, text: string | Buffer): string {
  const path = join(folder.path, name);
  writeFileSync(path, text);
  return path;
}

test('a file is read without the mark that some editors put first', () => {
  expect(readText(file('marked.txt', '\uFEFFNi\n'))).toBe('Ni\n');
});

test('text that is no UTF-8 is refused, not read as other letters', async () => {
  for (const encoding of ['latin1', 'utf16le'] as const) {
    const path = file(`${encoding}.csv`, Buffer.from('\uFEFFHärte;3\n', encoding));
    expect(await faultsOf(() => readText(path))).toEqual(['file/encoding']);
    expect(await faultsOf(() => readJson(path))).toEqual(['file/encoding']);
  }
});

test('what cannot be read is told: no file, a folder', async () => {
  expect(await faultsOf(() => readText(join(folder.path, 'none')))).toEqual(['file/unreadable']);
  expect(await faultsOf(() => readText(folder.path))).toEqual(['file/unreadable']);
});

test('a file beyond all reason is refused', async () => {
  expect(await faultsOf(() => readText(file('huge.txt', 'x'.repeat(50_000_001))))).toEqual([
    'file/too-large',
  ]);
});

test('JSON is read, and what is none refused', async () => {
  expect(readJson(file('good.json', '{"keep": 5}'))).toEqual({ keep: 5 });
  expect(await faultsOf(() => readJson(file('bad.json', '{"keep": 5,}')))).toEqual(['file/malformed-json']);
});

test('what was read from standard input is called so', () => {
  expect(fault('file/malformed-json', { file: '-', found: 'it ends' }).detail).toBe(
    'Standard input is not JSON: it ends.',
  );
});

test('a relative file is sought where the person stands, also through npm run', () => {
  expect(placeOf('/a/b.json')).toBe('/a/b.json');
  expect(placeOf('b.json')).toBe(join(process.cwd(), 'b.json'));
  const before = { ...process.env };
  Object.assign(process.env, { npm_lifecycle_event: 'tiegel', INIT_CWD: '/somewhere' });
  expect(placeOf('b.json')).toBe('/somewhere/b.json');
  process.env = before;
});

test('a line is an alloy; empty lines are none', () => {
  expect(alloyLines('Ni\r\n\n  Co20 Ni80 \n', '-')).toEqual([
    { text: 'Ni', place: 'Line 1 of standard input' },
    { text: 'Co20 Ni80', place: 'Line 3 of standard input' },
  ]);
});

test('every bad alloy is named by its place', async () => {
  expect(await faultsOf(() => readAlloys(alloyArguments(['Xx', 'Ni', 'NiNi']), 'atoms'))).toEqual([
    'element/unknown',
    'alloy/repeated-element',
  ]);
  expect(() => readAlloys(alloyArguments(['Xx', 'Ni', 'NiNi']), 'atoms')).toThrow(
    /Alloy 1, "Xx": .*\nAlloy 3, "NiNi": /,
  );
  expect(() => readAlloys(alloyLines('Ni\n\n\nXx\n', 'alloys.txt'), 'atoms')).toThrow(
    /Line 4 of alloys\.txt, "Xx": /,
  );
  expect(await faultsOf(() => readAlloys([], 'atoms'))).toEqual(['command/nothing-to-screen']);
});

test('workers are a whole number from 1 to 1024', () => {
  expect(workerCount('3')).toBe(3);
  for (const text of ['0', '1025', '2.5', 'many', '-1'])
    expect(() => workerCount(text)).toThrow('from 1 to 1024');
});
