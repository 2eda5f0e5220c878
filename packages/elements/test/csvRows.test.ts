import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { csvRows } from '../src/csvRows.ts';

const fieldsOf = (text: string): string[][] => csvRows(text).rows.map(({ fields }) => fields);

describe('a CSV text', () => {
  test('is split at commas and line ends of any kind', () => {
    expect(fieldsOf('a,b\r\nc,d\ne,f\rg,h')).toEqual([
      ['a', 'b'],
      ['c', 'd'],
      ['e', 'f'],
      ['g', 'h'],
    ]);
  });
  test('keeps commas, quotes and line ends inside quotes', () => {
    expect(fieldsOf('"a,b","say ""no""","two\nlines"\nc,,')).toEqual([
      ['a,b', 'say "no"', 'two\nlines'],
      ['c', '', ''],
    ]);
  });
  test('loses a byte order mark, spaces around plain fields and empty lines', () => {
    expect(fieldsOf('\uFEFF a , b \n\n  \nc,d\n')).toEqual([
      ['a', 'b'],
      ['c', 'd'],
    ]);
  });
  test('names the line of each row, after quoted line ends too', () => {
    expect(csvRows('a\n\n"b\nb"\nc').rows.map(({ line }) => line)).toEqual([1, 3, 5]);
  });
  test('without anything has no rows', () => {
    expect(csvRows('')).toEqual({ rows: [], broken: null });
  });
  test('that breaks its rules is read up to there', () => {
    expect(csvRows('a,b\n"c"d,e')).toEqual({
      rows: [{ line: 1, fields: ['a', 'b'] }],
      broken: { line: 2, what: 'something follows a closing quote' },
    });
    expect(csvRows('a,"b\nc').broken?.line).toBe(1);
    expect(csvRows('a,b"c').broken?.line).toBe(1);
  });
  test('is read no further than to a row of more fields than any table has', () => {
    const thousand = ','.repeat(999);
    expect(csvRows(`${thousand}\n${thousand}`).rows.map(({ fields }) => fields.length)).toEqual([1000, 1000]);
    expect(csvRows(`a,b\n\n${','.repeat(1_000_000)}`)).toEqual({
      rows: [{ line: 1, fields: ['a', 'b'] }],
      broken: { line: 3, what: 'it has more than 1000 fields' },
    });
  });
});

test('any fields come back when written with quotes', () => {
  const field = fc.string({ unit: fc.constantFrom('a', '"', ',', '\n', '\r', ' ', 'ü') });
  fc.assert(
    fc.property(fc.array(fc.tuple(field, field), { minLength: 1 }), (rows) => {
      const text = rows.map((row) => row.map((one) => `"${one.replaceAll('"', '""')}"`).join()).join('\n');
      expect(fieldsOf(text)).toEqual(rows);
    }),
  );
});

test('any text ends with rows or a break', () => {
  fc.assert(
    fc.property(fc.string({ unit: fc.constantFrom('"', ',', '\n', '\r', 'x') }), (text) => {
      expect(csvRows(text).rows.length).toBeLessThanOrEqual(text.length + 1);
    }),
    { numRuns: 1000 },
  );
});
