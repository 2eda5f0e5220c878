import { expect, test } from 'vitest';
import { separatorOf, tableRows } from '../src/index.ts';

const rowsOf = (text: string, numbers: string[] = ['value']) =>
  tableRows(text, numbers).rows.map(({ fields }) => fields);

test('the header tells what parts the fields', () => {
  expect(separatorOf('symbol,value\nAl;2\n')).toBe(',');
  expect(separatorOf('\n\uFEFFsymbol;value')).toBe(';');
  expect(separatorOf('\uFEFFsymbol\tvalue')).toBe('\t');
  expect(separatorOf('"a;b",value')).toBe(',');
  expect(separatorOf('symbol\nAl;2')).toBe(',');
  expect(separatorOf('')).toBe(',');
});

test('a first line that states the separator is no row, and lines stay those of the file', () => {
  const header = [
    { line: 2, fields: ['symbol', 'value'] },
    { line: 3, fields: ['Al', '2.5'] },
  ];
  for (const separator of [';', '\t'])
    for (const first of [
      `sep=${separator}`,
      `\uFEFFsep=${separator}`,
      `"sep=${separator}"`,
      `SEP=${separator};`,
    ])
      for (const end of ['\n', '\r\n', '\r']) {
        const text = [first, `symbol${separator}value`, `Al${separator}2,5`].join(end);
        expect(tableRows(text, ['value'])).toEqual({ rows: header, broken: null, faults: [] });
      }
  expect(rowsOf('sep=,\nsymbol,value\nAl,2.5')).toEqual([header[0]!.fields, header[1]!.fields]);
  // What is stated counts, also where another sign stands first in the header.
  expect(rowsOf('sep=;\nvalue, of mine;symbol\n1;Al')[0]).toEqual(['value, of mine', 'symbol']);
  expect(rowsOf('sep=;')).toEqual([]);
  expect(rowsOf('sep=x,value\nAl,2')[0]).toEqual(['sep=x', 'value']);
});

test('cells of a spreadsheet are read with their decimal commas, in columns of numbers alone', () => {
  const rows = [
    ['symbol', 'value', 'note'],
    ['Al', '-2.5', '2,5'],
    ['Ni', '0.250', ''],
    ['Fe', '1250.500', ''],
    ['Co', '3', ''],
    ['Cr', '1.5e3', ''],
  ];
  for (const separator of [';', '\t']) {
    const text = ['symbol,value,note', 'Al,-2-5,2-5', 'Ni,0-250,', 'Fe,1250-500,', 'Co,3,', 'Cr,1-5e3,']
      .map((line) => line.replaceAll(',', separator).replaceAll(/(\d)-/g, '$1,'))
      .join('\r\n');
    expect(rowsOf(text)).toEqual(rows);
    expect(tableRows(text, ['value']).faults).toEqual([]);
  }
});

test('a number that may be read in two ways is left, and told where it has a point', () => {
  expect(rowsOf('symbol;value\nAl;1,250\nNi;1.250,5\nFe;2,5')).toEqual([
    ['symbol', 'value'],
    ['Al', '1,250'],
    ['Ni', '1.250,5'],
    ['Fe', '2.5'],
  ]);
  expect(tableRows('symbol;value\nAl;2,5\nNi;1.250\nFe;1.5', ['value']).faults).toMatchObject([
    { code: 'request/wrong-value', pointer: '/rows/1/value', detail: expect.stringContaining('line 3') },
  ]);
  // Points alone are decimal points, as in every other table.
  expect(tableRows('symbol;value\nAl;1.250\nNi;2', ['value']).faults).toEqual([]);
});

test('where commas part the fields, a number in quotes keeps its comma', () => {
  expect(rowsOf('symbol,value\nAl,"2,5"')).toEqual([
    ['symbol', 'value'],
    ['Al', '2,5'],
  ]);
});

test('rows of separators alone, as spreadsheets end a table, are left out, and lines stay those of the file', () => {
  const { rows } = tableRows('symbol,value\n,\nAl,2\n,\n"",\n', ['value']);
  expect(rows).toEqual([
    { line: 1, fields: ['symbol', 'value'] },
    { line: 3, fields: ['Al', '2'] },
  ]);
  expect(rowsOf('symbol;value\nAl;2,5\n;\n')).toEqual([
    ['symbol', 'value'],
    ['Al', '2.5'],
  ]);
});
