import { expect, test } from 'vitest';
import { sortRows } from '../../src/data/table/sortRows.ts';
import type { TableColumn } from '../../src/data/table/tableColumn.ts';
import { tableCsv } from '../../src/data/table/tableCsv.ts';

interface Row {
  name: string;
  value: number | null;
}
const rows: Row[] = [
  { name: 'b', value: 10 },
  { name: 'a', value: null },
  { name: 'c', value: 9 },
  { name: 'd', value: 10 },
];
const column = (id: 'name' | 'value', unit = ''): TableColumn<Row> => ({
  ...{ id, name: id, symbol: '', unit, meaning: '', holds: 'words', width: 5 },
  value: (row) => row[id],
});
const names = (sorted: readonly Row[]) => sorted.map(({ name }) => name).join('');

test('rows are sorted by number, those without a value last either way, equal ones as they stood', () => {
  expect(names(sortRows(rows, column('value'), 'asc'))).toBe('cbda');
  expect(names(sortRows(rows, column('value'), 'desc'))).toBe('bdca');
  expect(names(sortRows(rows, column('name'), 'desc'))).toBe('dcba');
  expect(names(sortRows(rows, undefined, 'asc'))).toBe('bacd');
  expect(names(rows)).toBe('bacd');
});

test('copied rows have units in the head, and quotes where RFC 4180 asks for them', () => {
  const strange = [{ name: 'say "x", y\nz', value: -0.5 }];
  expect(tableCsv([...strange, rows[1]!], [column('name'), column('value', 'kJ/mol')])).toBe(
    'name,value (kJ/mol)\r\n"say ""x"", y\nz",-0.5\r\na,',
  );
});
