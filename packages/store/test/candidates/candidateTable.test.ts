import Database from 'better-sqlite3';
import { expect, test } from 'vitest';
import { candidateTable } from '../../src/candidates/candidateTable.ts';
import { compositionHash } from '../../src/candidates/compositionHash.ts';
import { openStore } from '../../src/index.ts';
import { openConnections } from '../../src/sharing/connections.ts';
import { searchTable } from '../../src/tables/searches.ts';
import { batchOf, candidates, query, selected } from '../fixtures/candidates.ts';
import { columns, freshFile, openTestStore } from '../fixtures/files.ts';
import { chunks, keptSearch, newSearch } from '../fixtures/searches.ts';

const set = (search: number, kept = 5) => ({ search, kept, columns });

test('a candidate comes back in at.%, with its quantities and null for missing ones', () => {
  const store = openTestStore();
  const { number } = keptSearch(store);
  const one = { rank: 1, symbols: ['Al', 'Cr', 'Fe'], parts: [1, 7, 12], score: 0.1 + 0.2 };
  store.candidates.insert(number, batchOf([{ ...one, quantities: { heaviness: 7.25, price: null } }]));
  expect(store.candidates.page(set(number), query()).items).toEqual([
    {
      rank: 1,
      composition: { Al: 5, Cr: 35, Fe: 60 },
      quantities: { heaviness: 7.25, price: null, spread: null },
      score: 0.1 + 0.2,
    },
  ]);
});

test.each([Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY])(
  '%s is refused as a value, with its whole batch',
  (value) => {
    const store = openTestStore();
    const { number } = keptSearch(store);
    const good = { rank: 1, symbols: ['Al'], parts: [1], score: 1, quantities: {} };
    const bad = { ...good, rank: 2, quantities: { price: value } };
    expect(() => store.candidates.insert(number, batchOf([good, bad]))).toThrow(/price/);
    expect(() =>
      store.candidates.insert(number, batchOf([good, { ...good, rank: 2, score: value }])),
    ).toThrow(/score/);
    expect(store.candidates.page(set(number), query()).items).toEqual([]);
  },
);

test.each([2 ** 20, 0])(
  'candidates are found by their parts, and only by exactly these (%i bytes held)',
  (held) => {
    const connections = openConnections(freshFile());
    const table = candidateTable(connections, columns, held);
    const [number, other] = [1, 2].map(
      () => searchTable(connections.main).create(newSearch(), chunks(1)).number,
    );
    const all = [...candidates(50)];
    table.insert(number!, batchOf(all));
    for (const { symbols, parts, rank } of all) {
      expect(table.find(set(number!, 50), symbols, parts)?.rank).toBe(rank);
      expect(table.find(set(number!, 50), symbols, [...parts.slice(1), 77])).toBeNull();
      expect(table.find(set(other!, 0), symbols, parts)).toBeNull();
    }
    connections.close();
  },
);

test('compositions with the same hash are told apart', () => {
  const store = openTestStore();
  const { number } = keptSearch(store);
  // Found by trying: of so many compositions some share 32 bits.
  const one = { rank: 1, symbols: ['Cr', 'Fe', 'Ni'], parts: [8, 175, 217], score: 1, quantities: {} };
  const other = { ...one, rank: 2, symbols: ['Al', 'Cr', 'Fe'], parts: [29, 134, 237] };
  expect(compositionHash('Cr Fe Ni', '8 175 217')).toBe(compositionHash('Al Cr Fe', '29 134 237'));
  const rankOf = ({ symbols, parts }: typeof one, kept: number) =>
    store.candidates.find(set(number, kept), symbols, parts)?.rank ?? null;
  store.candidates.insert(number, batchOf([one]));
  expect([rankOf(one, 1), rankOf(other, 1)]).toEqual([1, null]);
  store.candidates.insert(number, batchOf([other]));
  expect([rankOf(one, 2), rankOf(other, 2)]).toEqual([1, 2]);
});

test('clearing takes away the candidates of one search, a bounded number at a time', () => {
  const store = openTestStore();
  const [first, second] = [keptSearch(store).number, keptSearch(store).number];
  for (const number of [first, second]) store.candidates.insert(number, batchOf([...candidates(25)]));
  expect([1, 2, 3, 4].map(() => store.candidates.clear(first, 10))).toEqual([10, 10, 5, 0]);
  expect(store.candidates.page(set(first, 25), query()).items).toEqual([]);
  expect(store.candidates.page(set(second, 25), query()).items).toHaveLength(25);
});

test('columns and orders go with the candidates that they are of', async () => {
  const connections = openConnections(freshFile());
  const table = candidateTable(connections, columns);
  const { number } = searchTable(connections.main).create(newSearch(), chunks(1));
  const rows = (name: string) => connections.main.prepare(`select count(*) from ${name}`).pluck().get();
  table.insert(number, batchOf([...candidates(30)]));
  const before = rows('candidate_block') as number;
  const byPrice = query({ order: 'price' });
  expect([...table.prepare(set(number, 30), byPrice)].length).toBeGreaterThan(0);
  // An order is stored behind the answer that needed it.
  await new Promise(setImmediate);
  expect(rows('candidate_block')).toBe(before + 1);
  const first = table.page(set(number, 30), byPrice).items[0];
  table.clear(number, 100);
  expect([rows('candidate_block'), rows('candidate')]).toEqual([0, 0]);
  table.insert(number, batchOf([...candidates(30, 5)]));
  expect(table.page(set(number, 30), byPrice).items[0]).not.toEqual(first);
  // What is on its way when they go is not stored for the next ones.
  table.clear(number, 100);
  await new Promise(setImmediate);
  expect(rows('candidate_block')).toBe(0);
  connections.close();
});

test('an order that does not fit on the disk serves all the same', () => {
  const connections = openConnections(freshFile(), { maximumBytes: 1_000_000 });
  const table = candidateTable(connections, columns);
  const { number } = searchTable(connections.main).create(newSearch(), chunks(1));
  const all = [...candidates(2_000)];
  table.insert(number, batchOf(all));
  const filler = connections.main.prepare('insert into charge_sheet (saved_at, sheet) values (?, ?)');
  for (const size of [100_000, 10_000, 2_000]) {
    expect(() => {
      for (;;) filler.run('2027-01-01', 'x'.repeat(size));
    }).toThrow(/full/);
  }
  const asked = query({ order: 'spread', direction: 'desc' });
  const ranks = table.page(set(number, 2_000), asked).items.map(({ rank }) => rank);
  expect(ranks).toEqual(selected(all, asked).slice(0, 100));
  expect([...table.stream(set(number, 2_000), asked)]).toHaveLength(2_000);
  connections.close();
});

test('an order that does not fit on the disk, and is let go while it is read, is read to its end', async () => {
  const connections = openConnections(freshFile());
  const all = [...candidates(5_000)];
  const { number } = searchTable(connections.main).create(newSearch(), chunks(1));
  // Room for the columns of one order at a time.
  const table = candidateTable(connections, columns, 100_000);
  table.insert(number, batchOf(all));
  connections.main.pragma(`max_page_count = ${connections.main.pragma('page_count', { simple: true })}`);
  for (const first of ['made before it is read', 'made by reading']) {
    const asked = query({ order: first === 'made by reading' ? 'price' : 'spread', limit: 5_000 });
    if (first !== 'made by reading') for (const _ of table.prepare(set(number, 5_000), asked));
    const ranks: number[] = [];
    for (const { rank } of table.stream(set(number, 5_000), asked)) {
      ranks.push(rank);
      if (ranks.length !== 1_000) continue;
      table.page(set(number, 5_000), query({ order: 'heaviness' }));
      table.page(set(number, 5_000), query({ order: 'heaviness', direction: 'desc' }));
      // An order is stored behind the answer that needed it.
      await new Promise(setImmediate);
    }
    expect(ranks).toEqual(selected(all, asked));
  }
  connections.close();
});

test('candidates that were stored without columns are filtered, ordered and found all the same', () => {
  const connections = openConnections(freshFile());
  const table = candidateTable(connections, columns);
  const { number } = searchTable(connections.main).create(newSearch(), chunks(1));
  const all = [...candidates(200)];
  table.insert(number, batchOf(all));
  connections.main.exec('delete from candidate_block');
  const asked = query({
    order: 'price',
    ranges: [{ quantity: 'spread', max: 0.7 }],
    has: ['Fe'],
    without: ['Al'],
  });
  const page = table.page(set(number, 200), asked);
  expect(page.items.map(({ rank }) => rank)).toEqual(selected(all, asked).slice(0, 100));
  expect(table.find(set(number, 200), all[7]!.symbols, all[7]!.parts)?.rank).toBe(8);
  connections.close();
});

test('a quantity that is new at opening has no value in older candidates and one in newer', () => {
  const file = freshFile();
  const first = openStore({ file, columns: ['heaviness'] });
  const { number } = keptSearch(first);
  const one = { rank: 1, symbols: ['Al'], parts: [1], score: 1 };
  first.candidates.insert(number, batchOf([{ ...one, quantities: { heaviness: 3 } }]));
  first.close();
  const later = openTestStore(file, { columns: ['toughness', 'heaviness'] });
  later.candidates.insert(number, batchOf([{ ...one, rank: 2, quantities: { heaviness: 4, toughness: 5 } }]));
  const both = { search: number, kept: 2, columns: ['heaviness', 'toughness'] };
  expect(later.candidates.page(both, query()).items.map((item) => item.quantities)).toEqual([
    { heaviness: 3, toughness: null },
    { heaviness: 4, toughness: 5 },
  ]);
});

test('columns of quantities are real numbers, and an id that is no name is refused', () => {
  const file = freshFile();
  openTestStore(file).close();
  const database = new Database(file, { readonly: true });
  const types = "select type from pragma_table_info('candidate') where name like 'q!_%' escape '!'";
  expect(database.prepare(types).pluck().all()).toEqual(['REAL', 'REAL', 'REAL']);
  database.close();
  expect(() => openStore({ file, columns: ['x) values (1); drop table search; --'] })).toThrow(/no id/);
  expect(() => openTestStore(file).candidates.page(set(1), query({ order: 'rank desc; --' }))).toThrow(
    /no id/,
  );
});
