import fc, { array, assert, property, string } from 'fast-check';
import { expect, test } from 'vitest';
import {
  csvRows,
  csvText,
  ownColumnCsv,
  priceListCsv,
  readOwnColumn,
  readPriceList,
} from '../../src/index.ts';

test('what is written is what is read again', () => {
  const row = array(string({ unit: fc.constantFrom(...'a ,"\r\n;\t0é') }), { minLength: 2, maxLength: 4 });
  assert(
    property(array(row, { minLength: 1, maxLength: 5 }), (rows) => {
      expect(
        csvRows(csvText(['a', 'b'], rows))
          .rows.slice(1)
          .map(({ fields }) => fields),
      ).toEqual(rows);
    }),
  );
});

test('price lists and columns are written as files that read as the same', () => {
  const list = readPriceList(
    'symbol,pricePerKilogram,currency,date,source\nNi,17.250,CHF,2026-10-01,"a, b"\n',
  );
  expect(readPriceList(priceListCsv(list))).toEqual(list);
  const column = readOwnColumn('symbol,value,name,unit,mixing\nNi,1,"Supply, in words",,mole\nCo,2,,,\n');
  expect(readOwnColumn(ownColumnCsv(column))).toEqual(column);
});
