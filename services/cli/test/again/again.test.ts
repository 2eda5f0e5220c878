import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Candidate } from '@tiegel/contract';
import { afterAll, expect, test } from 'vitest';
import { temporaryFolder } from '../../../../test/fixtures/temporaryFolder.ts';
import { cellsOf } from '../../src/again/cellsOf.ts';
import { compareRows } from '../../src/again/compareRows.ts';
import { openExport } from '../../src/again/openExport.ts';
import { faultsOf } from '../faultsOf.ts';

const folder = await temporaryFolder('again');
afterAll(folder.remove);

const specification = { elements: { pool: ['Al', 'Ni'] }, name: 'with, a comma: and "quotes"' };
const counts = { systems: 1, points: 3, passed: 2, passedEach: [], outside: {} };
const candidates: Candidate[] = [
  {
    rank: 1,
    composition: { Al: 5, Ni: 95 },
    quantities: { density: 8.1234567890123, omega: null },
    score: 0.1,
  },
  { rank: 2, composition: { Ni: 100 }, quantities: { density: 8.9, omega: -1.5e-7 }, score: null },
];
const csv = [
  '# name: A name: with a colon',
  `# specification: ${JSON.stringify(specification)}`,
  '# dataVersion: data-1',
  '# engineVersion: engine-1',
  '# prices: null',
  `# counts: ${JSON.stringify(counts)}`,
  'rank,composition (at.%),Al (at.%),Ni (at.%),density (g/cm3),omega,score',
  '1,Al5Ni95,5,95,8.1234567890123,,0.1',
  '2,Ni100,0,100,8.9,-1.5e-7,',
];
const head = { specification, dataVersion: 'data-1', engineVersion: 'engine-1', prices: null, counts };
const ndjson = [JSON.stringify({ export: head }), ...candidates.map((one) => JSON.stringify(one))];

function file(lines: readonly string[], end = '\n'): string {
  const path = join(folder.path, 'export');
  writeFileSync(path, lines.join(end) + end);
  return path;
}

async function compared(lines: readonly string[], found: readonly Candidate[] = candidates, end = '\n') {
  const { rows } = await openExport(file(lines, end));
  return compareRows(rows, found);
}

test('the head of either form says what the rows depend on', async () => {
  expect((await openExport(file(csv))).head).toMatchObject(head);
  expect((await openExport(file(ndjson))).head).toEqual(head);
});

test('the same rows are the same in either form, whatever ends the lines', async () => {
  for (const lines of [csv, ndjson]) {
    expect(await compared(lines)).toEqual({ rows: 2, same: true, differing: 0, differences: [] });
  }
  expect((await compared(csv, candidates, '\r\n')).same).toBe(true);
});

test('a line ends at line feeds alone: a name with another separator of lines is read whole', async () => {
  const name = 'before\u2028between\u2029behind';
  const named = { ...head, specification: { ...specification, name } };
  const lines = [JSON.stringify({ export: named }), ...ndjson.slice(1)];
  expect((await openExport(file(lines))).head.specification).toEqual(named.specification);
  expect(await compared(lines)).toMatchObject({ rows: 2, same: true });
  const rows = csv.with(1, `# specification: ${JSON.stringify(named.specification)}`);
  expect((await openExport(file(rows, '\r\n'))).head.specification).toEqual(named.specification);
});

test('one digit more or less is a difference, and named', async () => {
  const changed = csv.map((line) => line.replace('8.1234567890123', '8.1234567890124'));
  expect(await compared(changed)).toEqual({
    rows: 2,
    same: false,
    differing: 1,
    differences: [{ row: 1, column: 'density', was: 8.1234567890124, is: 8.1234567890123 }],
  });
});

test('a value where there was none, an element more and another order are differences', async () => {
  const [first, second] = candidates as [Candidate, Candidate];
  expect(
    (await compared(csv, [{ ...first, quantities: { density: 8.1234567890123, omega: 1 } }, second]))
      .differences,
  ).toEqual([{ row: 1, column: 'omega', was: null, is: 1 }]);
  expect(
    (await compared(ndjson, [{ ...first, composition: { Al: 5, Ni: 90, Co: 5 } }, second])).differences,
  ).toEqual([
    { row: 1, column: 'Ni', was: 95, is: 90 },
    { row: 1, column: 'Co', was: null, is: 5 },
  ]);
  expect((await compared(ndjson, [second, first])).differing).toBe(2);
});

test('rows too many and too few are differences', async () => {
  expect(await compared(csv.slice(0, -1))).toMatchObject({ rows: 1, same: false, differing: 1 });
  expect(await compared([...csv, csv.at(-1)!])).toMatchObject({ rows: 3, same: false, differing: 1 });
});

test('of a thousand differing rows twenty differences are shown', async () => {
  const many = Array.from({ length: 1000 }, (_, index) => ({ ...candidates[0]!, rank: index + 1, score: 2 }));
  const lines = [ndjson[0]!, ...many.map((one) => JSON.stringify({ ...one, score: 1 }))];
  const { differing, differences } = await compared(lines, many);
  expect({ differing, shown: differences.length }).toEqual({ differing: 1000, shown: 20 });
});

test('what is no export is refused', async () => {
  for (const lines of [['rank,composition'], ['{"export": {"specification": {}}}'], ['{"rank": '], ['']]) {
    expect(await faultsOf(() => openExport(file(lines)))).toEqual(['export/unreadable']);
  }
  expect(await faultsOf(() => openExport(join(folder.path, 'none')))).toEqual(['file/unreadable']);
});

// Examples of RFC 4180, section 2.
test('cells are told apart as RFC 4180 does', () => {
  expect(cellsOf('aaa,bbb,ccc')).toEqual(['aaa', 'bbb', 'ccc']);
  expect(cellsOf('"aaa","b""bb","c,cc"')).toEqual(['aaa', 'b"bb', 'c,cc']);
  expect(cellsOf(',a,,')).toEqual(['', 'a', '', '']);
});
