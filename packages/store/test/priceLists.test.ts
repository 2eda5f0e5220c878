import { expect, test } from 'vitest';
import { openStore } from '../src/index.ts';
import { columns, freshFile, openTestStore } from './fixtures/files.ts';

test('the list entered last is in force, after a restart too', () => {
  const file = freshFile();
  const first = openStore({ file, columns });
  expect(first.priceLists.inForce()).toBeNull();
  first.priceLists.enter({ currency: 'EUR', prices: { Al: 2.5 } }, '2027-01-14T08:00:00Z');
  first.priceLists.enter({ currency: 'EUR', prices: { Al: 2.75 } }, '2027-01-14T08:00:00Z');
  first.close();
  expect(openTestStore(file).priceLists.inForce()).toEqual({ currency: 'EUR', prices: { Al: 2.75 } });
});
