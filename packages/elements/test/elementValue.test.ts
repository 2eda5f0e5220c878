import { describe, expect, test } from 'vitest';
import {
  columns,
  conventionalAlloys,
  elementNumber,
  elements,
  type SourceCode,
  sourcedValue,
  sources,
} from '../src/index.ts';
import { publishedSource } from '../src/published/index.ts';

const all = elements.flatMap(({ symbol }) =>
  columns.map((column) => ({ symbol, column, ...sourcedValue(symbol, column.id) })),
);

describe('every value', () => {
  test('has a source of the table', () => {
    expect(all).toHaveLength(56 * 18);
    expect(all.filter(({ source }) => !Object.hasOwn(sources, source))).toEqual([]);
  });

  test('is null exactly where the source says why there is none, and a number above 0 or a word otherwise', () => {
    for (const { symbol, column, value, source } of all) {
      const place = `${symbol} ${column.id}`;
      if (source.startsWith('none-')) expect(value, place).toBeNull();
      else if (column.holds === 'words') expect(['transition', 'non-transition'], place).toContain(value);
      else if (/Hybridisation|Transformation/.test(column.id)) expect(value, place).toBeGreaterThanOrEqual(0);
      else expect(value, place).toBeGreaterThan(0);
    }
  });
});

// The gaps of the data, as listed with their sources.
test('these values are missing and no others', () => {
  const missing = Object.groupBy(
    all.filter(({ value }) => value === null),
    ({ column }) => column.id,
  );
  const named = Object.entries(missing).map(([id, values]) => [
    id,
    values.map(({ symbol }) => symbol).join(' '),
  ]);
  expect(Object.fromEntries(named)).toEqual({
    meltingTemperature: 'C',
    allenElectronegativity: 'La Ce Pr Nd Sm Gd Tb Dy Ho Er Tm Yb',
    youngsModulus: 'C Ga',
    shearModulus: 'Li C Ga',
    bulkModulus: 'C',
  });
});

test('no source code stands in the table unused', () => {
  const ofAlloys = [publishedSource, ...conventionalAlloys.map(({ source }) => source)];
  const used = new Set<SourceCode>([...all.map(({ source }) => source), 'TI', ...ofAlloys]);
  expect(Object.keys(sources).filter((code) => !used.has(code as SourceCode))).toEqual([]);
});

test('a row that deviates from its column carries its own source', () => {
  expect(sourcedValue('Mo', 'shearModulus')).toEqual({ value: 126, source: 'SMI' });
  expect(sourcedValue('Mn', 'density')).toEqual({ value: 7.47, source: 'WE' });
  expect(sourcedValue('Bi', 'metallicRadius').source).toBe('MIR');
  expect(sourcedValue('C', 'meltingTemperature')).toEqual({ value: null, source: 'none-sublimes' });
});

test('a word is no number, and a symbol without data is a mistake of the caller', () => {
  expect(elementNumber('Fe', 'miedemaClass')).toBeNull();
  expect(() => elementNumber('Xx', 'density')).toThrow(RangeError);
});
