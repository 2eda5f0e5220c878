import type { ImportVersion, SearchView } from '@tiegel/contract';
import { fixedDecimals } from '@tiegel/contract/terms';
import { demoPrices } from '@tiegel/elements';
import { expect, test } from 'vitest';
import { fittedTable } from '../../src/output/fittedTable.ts';
import { versionLines } from '../../src/output/importText.ts';
import { durationInWords } from '../../src/output/inWords.ts';
import { jsonList, jsonText } from '../../src/output/jsonText.ts';
import { quantityColumn, shownValue } from '../../src/output/quantityColumn.ts';
import { standingTexts } from '../../src/output/standingText.ts';
import { lineWidth, table } from '../../src/output/table.ts';

test('a table stands in columns under heads and units', () => {
  const columns = [
    { head: 'alloy', align: 'left' as const },
    { head: 'ρ', unit: 'g/cm3' },
  ];
  expect(
    table(columns, [
      ['NiCo', '8.9'],
      ['Al', null],
    ]),
  ).toEqual(['alloy      ρ', '       g/cm3', '────────────', 'NiCo     8.9', 'Al         –']);
});

const widest = (text: string) => Math.max(...text.split('\n').map(({ length }) => length));

test('a table that is wider than a line has its longest words broken over several', () => {
  const columns = [{ head: 'no.' }, { head: 'name', align: 'left' as const }];
  const narrow = [
    ['1', 'Short'],
    ['2', null],
  ];
  expect(fittedTable(columns, narrow)).toEqual(table(columns, narrow));
  // A word is never broken, and numbers are none.
  expect(fittedTable(columns, [['1', 'x'.repeat(90)]]).at(-1)).toBe(`  1  ${'x'.repeat(90)}`);
  const fitting = fittedTable(columns, [
    ['1', `${'word '.repeat(20)}end`],
    ['2', null],
  ]);
  expect(widest(fitting.join('\n'))).toBeLessThanOrEqual(lineWidth);
  expect(fitting.slice(2)).toEqual([
    `  1  ${'word '.repeat(15).trim()}`,
    `     ${'word '.repeat(5)}end`,
    '  2  –',
  ]);
});

test('imports and searches of long names, hours and counts fit into a line', () => {
  const version = {
    ...{
      number: 12,
      kind: 'materials',
      name: 'What stood on the shelf after the move in autumn',
      at: '2026-11-30T12:00:00Z',
    },
    ...{
      rows: 212,
      counts: { new: 150, changed: 31, same: 30, refused: 0 },
      inForce: false,
      withdrawnAt: null,
      searches: 10,
    },
  } as unknown as ImportVersion;
  const imports = [...versionLines([version])].join('');
  expect(widest(imports)).toBeLessThanOrEqual(lineWidth);
  for (const said of ['150\u00a0new', '31\u00a0changed', '30\u00a0same', 'shelf', 'autumn'])
    expect(imports).toContain(said);
  const view = {
    ...{ id: 'nnwnqpqhev58', state: 'running', progress: { points: 1, total: 3 }, secondsLeft: 90_000 },
    ...{ name: 'Cobalt-free impeller alloys for sea water', question: '' },
    schedule: {
      hours: { zone: 'America/Argentina/Buenos_Aires', from: '20:00', to: '06:00' },
      priority: 'usual',
    },
  } as unknown as SearchView;
  const searches = [...standingTexts([view])].join('');
  expect(widest(searches)).toBeLessThanOrEqual(lineWidth);
  for (const said of ['20:00', 'Buenos_Aires', 'Cobalt-free']) expect(searches).toContain(said);
});

test('numbers of a table have a hyphen as their minus, and zero has none', () => {
  expect([-1.25, -0.004, 0, -0, 1e-9, -15].map((value) => fixedDecimals(value, 2))).toEqual([
    ...['-1.25', '0.00', '0.00', '0.00', '0.00', '-15.00'],
  ]);
  expect([-0.4, -0.6].map((value) => fixedDecimals(value, 0))).toEqual(['0', '-1']);
  expect(shownValue('mixingEnthalpy', -0.004)).toBe('0.00');
});

test('units read as in sentences', () => {
  expect(quantityColumn('density', null).unit).toBe('g/cm³');
  expect(quantityColumn('atomicVolume', null).unit).toBe('cm³/mol');
});

test('a list of JSON is JSON, also an empty one', () => {
  for (const entries of [[], [{ a: 1 }], [1, null, 'x']]) {
    expect(JSON.parse([...jsonList(entries)].join(''))).toEqual(entries);
  }
  expect([...jsonText({ a: 1 })].join('')).toBe('{"a":1}\n');
});

test('units name the currency of the price list', () => {
  expect(quantityColumn('cost', { ...demoPrices, currency: 'CHF' }).unit).toBe('CHF/kg');
  expect(shownValue('density', 7.876)).toBe('7.88');
  expect(shownValue('omega', null)).toBeNull();
});

test('durations and large numbers read well', () => {
  expect([0.2, 45, 600, 20_000, 1e6].map(durationInWords)).toEqual([
    'a second',
    '45 s',
    '10 min',
    '6 h',
    '12 days',
  ]);
});
