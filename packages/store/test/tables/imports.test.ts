import Database from 'better-sqlite3';
import { expect, test } from 'vitest';
import { openStore, type StoredImport } from '../../src/index.ts';
import { migrate, migrations } from '../../src/migrate.ts';
import { columns, freshFile, openTestStore } from '../fixtures/files.ts';

const counts = { new: 1, changed: 0, same: 0, refused: 0 };
const pairs = {
  kind: 'pairs',
  subject: '',
  name: 'first',
  data: [{ a: 'Al', b: 'Ni' }],
  rows: 1,
  counts,
} as const;
const [morning, noon] = ['2027-01-14T08:00:00Z', '2027-01-14T12:00:00Z'];

test('what is brought in stands in order until it is withdrawn, after a restart too', () => {
  const file = freshFile();
  const first = openStore({ file, columns });
  const one = first.imports.enter(pairs, morning).stored;
  const two = first.imports.enter({ ...pairs, name: 'second' }, noon).stored;
  expect(one).toEqual({ ...pairs, number: 1, at: morning, withdrawnAt: null });
  first.imports.setWithdrawn(one.number, noon);
  first.close();
  const again = openTestStore(file);
  expect(again.imports.standing('pairs')).toEqual([two]);
  const told = ({ data: _, ...listed }: StoredImport) => listed;
  expect(again.imports.list()).toEqual([told(two), { ...told(one), withdrawnAt: noon }]);
  again.imports.setWithdrawn(one.number, null);
  expect(again.imports.standing('pairs')).toEqual([one, two]);
  expect(again.imports.standing('alloys')).toEqual([]);
  expect(again.imports.find(3)).toBeNull();
});

test('the same key keeps one, and its number is never given again', () => {
  const { imports } = openTestStore(freshFile());
  const { stored, created } = imports.enter(pairs, morning, 'sent once');
  expect(created).toBe(true);
  expect(imports.enter({ ...pairs, name: 'other' }, noon, 'sent once')).toEqual({ stored, created: false });
  expect(imports.enter(pairs, noon).stored.number).toBe(2);
});

test('all versions of a column are withdrawn at once, and no other', () => {
  const { imports } = openTestStore(freshFile());
  for (const subject of ['supply', 'hardness', 'supply']) {
    imports.enter({ ...pairs, kind: 'column', subject }, morning);
  }
  expect(imports.withdrawAll('column', 'supply', noon)).toBe(2);
  expect(imports.withdrawAll('column', 'supply', noon)).toBe(0);
  expect(imports.standing('column').map(({ subject }) => subject)).toEqual(['hardness']);
});

test('lists and columns that were entered before there were imports are versions of them', () => {
  const database = new Database(':memory:');
  const steps = migrations();
  migrate(database, steps.slice(0, 8));
  const list = (price: number, invented = false) =>
    JSON.stringify({ currency: 'EUR', invented, prices: { Al: { pricePerKilogram: price } } });
  const enterList = database.prepare('insert into price_list (entered_at, list) values (?, ?)');
  enterList.run('1', list(2));
  enterList.run('2', list(9, true));
  enterList.run('3', list(3));
  const enterColumn = database.prepare('insert into own_column (id, entered_at, "column") values (?, ?, ?)');
  const column = JSON.stringify({ id: 'supply', name: 'Supply', values: { Al: 1, Ni: 2 } });
  enterColumn.run('supply', '4', column);
  enterColumn.run('supply', '5', null);
  enterColumn.run('supply', '6', column);
  migrate(database, steps);
  const rows = database
    .prepare(
      "select kind, subject, name, at, rows, counts ->> 'new' as fresh, withdrawn_at as gone from data_import order by number",
    )
    .all();
  expect(rows).toEqual([
    { kind: 'prices', subject: '', name: '', at: '1', rows: 1, fresh: 1, gone: '2' },
    { kind: 'prices', subject: '', name: '', at: '3', rows: 1, fresh: 1, gone: null },
    { kind: 'column', subject: 'supply', name: 'Supply', at: '4', rows: 2, fresh: 2, gone: '5' },
    { kind: 'column', subject: 'supply', name: 'Supply', at: '6', rows: 2, fresh: 2, gone: null },
  ]);
});
