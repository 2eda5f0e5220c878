import { expect, test } from 'vitest';
import { openStore } from '../../src/index.ts';
import { columns, freshFile, openTestStore } from '../fixtures/files.ts';

const at = '2027-01-14T08:00:00Z';

test('numbers rise by one, and what was saved is there after a restart', () => {
  const file = freshFile();
  const first = openStore({ file, columns });
  expect(first.chargeSheets.list()).toEqual([]);
  expect(first.chargeSheets.save({ mass: 50 }, at)).toEqual({
    stored: { number: 1, savedAt: at, sheet: { mass: 50 } },
    created: true,
  });
  expect(first.chargeSheets.save({ mass: 20 }, at).stored.number).toBe(2);
  first.close();
  const again = openTestStore(file);
  expect(again.chargeSheets.list().map(({ number, sheet }) => [number, sheet])).toEqual([
    [2, { mass: 20 }],
    [1, { mass: 50 }],
  ]);
  expect(again.chargeSheets.find(1)?.sheet).toEqual({ mass: 50 });
  expect(again.chargeSheets.find(3)).toBeNull();
});

test('the same key saves once, whatever comes with it the second time', () => {
  const { chargeSheets } = openTestStore();
  const { stored } = chargeSheets.save({ mass: 50 }, at, 'a key');
  expect(chargeSheets.save({ mass: 50 }, '2027-01-15T08:00:00Z', 'a key')).toEqual({
    stored,
    created: false,
  });
  expect(chargeSheets.list()).toHaveLength(1);
});
