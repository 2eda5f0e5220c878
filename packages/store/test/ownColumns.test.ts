import { expect, test } from 'vitest';
import { openStore } from '../src/index.ts';
import { columns, freshFile, openTestStore } from './fixtures/files.ts';

test('the newest column of an id is in force until it is taken out, after a restart too', () => {
  const file = freshFile();
  const first = openStore({ file, columns });
  expect(first.ownColumns.inForce()).toEqual([]);
  first.ownColumns.enter('hardness', { id: 'hardness', values: { Al: 1 } }, '2027-01-14T08:00:00Z');
  first.ownColumns.enter('supply', { id: 'supply', values: { Al: 3 } }, '2027-01-14T08:01:00Z');
  first.ownColumns.enter('hardness', { id: 'hardness', values: { Al: 2 } }, '2027-01-14T08:02:00Z');
  first.close();
  const again = openTestStore(file);
  expect(again.ownColumns.inForce()).toEqual([
    { id: 'hardness', values: { Al: 2 } },
    { id: 'supply', values: { Al: 3 } },
  ]);
  expect(again.ownColumns.remove('hardness', '2027-01-14T08:03:00Z')).toBe(true);
  expect(again.ownColumns.remove('hardness', '2027-01-14T08:04:00Z')).toBe(false);
  expect(again.ownColumns.inForce()).toEqual([{ id: 'supply', values: { Al: 3 } }]);
});
