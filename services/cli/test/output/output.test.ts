import { demoPrices } from '@tiegel/elements';
import { expect, test } from 'vitest';
import { durationInWords } from '../../src/output/inWords.ts';
import { jsonList, jsonText } from '../../src/output/jsonText.ts';
import { quantityColumn, shownValue } from '../../src/output/quantityColumn.ts';
import { table } from '../../src/output/table.ts';

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
