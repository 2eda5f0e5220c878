import { csvRows, readOwnColumn, readPriceList } from '@tiegel/elements';
import { readMaterials } from '@tiegel/charge';
import { expect, test } from 'vitest';
import { countsInWords } from '../../src/data/imports/fateWords.ts';
import { importKinds, kindOf } from '../../src/data/imports/importKinds.ts';
import { readTextFile } from '../../src/data/imports/readTextFile.ts';

test.each(importKinds)('the example of $id has the columns that are told, and says that it is invented', ({
  id,
  columns,
  example,
}) => {
  const { rows, broken } = csvRows(example);
  expect(broken).toBeNull();
  expect(rows[0]!.fields).toEqual(columns.map(([name]) => name));
  expect(rows.length).toBeGreaterThan(1);
  for (const { fields } of rows) expect(fields).toHaveLength(columns.length);
  if (id !== 'materials') expect(example).toContain('invented');
});

test('the examples are read by what reads such lists', () => {
  expect(Object.keys(readPriceList(kindOf('prices').example).prices)).toEqual(['Fe', 'Ni']);
  expect(readOwnColumn(kindOf('column').example).unit).toBe('HV');
  expect(readMaterials(kindOf('materials').example).materials).toHaveLength(2);
});

test('counts are told without what there is none of', () => {
  expect(countsInWords({ new: 3, changed: 0, same: 20, refused: 0 })).toBe('3 new, 20 the same as before');
  expect(countsInWords({ new: 0, changed: 0, same: 0, refused: 0 })).toBe('no rows');
});

test('a file that is no UTF-8 is refused with what to do; a good one is read', async () => {
  const file = (bytes: Uint8Array<ArrayBuffer>) => new File([bytes], 'list.csv');
  expect(await readTextFile(file(new TextEncoder().encode('ü,1\n')))).toEqual({ text: 'ü,1\n' });
  // 'ü' in ISO 8859-1 is the single byte 0xFC, which begins nothing in UTF-8 (RFC 3629).
  expect(await readTextFile(file(new Uint8Array([0xfc, 0x2c, 0x31])))).toEqual({
    wrong: expect.stringContaining('CSV UTF-8'),
  });
});
