import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { CandidateQuery } from '@tiegel/contract';
import fc from 'fast-check';
import { beforeAll, expect, test } from 'vitest';
import type { CandidateSet } from '../../src/candidates/candidateSet.ts';
import { type CandidateTable, candidateTable } from '../../src/candidates/candidateTable.ts';
import { type Connections, openConnections } from '../../src/sharing/connections.ts';
import { searchTable } from '../../src/tables/searches.ts';
import { batchOf, candidates, query, selected } from '../fixtures/candidates.ts';
import { columns } from '../fixtures/files.ts';
import { chunks, newSearch } from '../fixtures/searches.ts';

const all = [...candidates(600)].map((one) => ({ ...one, front: one.rank % 7 === 0 }));
let connections: Connections;
let set: CandidateSet;
let other: CandidateSet;
/** The same candidates where all columns are held in memory, and where none is. */
let tables: Record<'held' | 'read', CandidateTable>;

beforeAll(() => {
  const folder = mkdtempSync(join(tmpdir(), 'store-test-'));
  connections = openConnections(join(folder, 'searches.db'));
  tables = { held: candidateTable(connections, columns), read: candidateTable(connections, columns, 0) };
  const searches = searchTable(connections.main);
  const [first, second] = [1, 2].map(() => searches.create(newSearch(), chunks(1)).number);
  // In batches of any length.
  tables.held.insert(first!, batchOf(all.slice(0, 250)));
  tables.held.insert(first!, batchOf(all.slice(250, 251)));
  tables.held.insert(first!, batchOf(all.slice(251)));
  tables.held.insert(second!, batchOf([...candidates(650, 2)]));
  set = { search: first!, kept: all.length, columns };
  other = { search: second!, kept: 650, columns };
  return () => {
    connections.close();
    rmSync(folder, { recursive: true });
  };
});

const queries: fc.Arbitrary<CandidateQuery> = fc.record(
  {
    ranges: fc.array(
      fc.record(
        {
          quantity: fc.constantFrom('heaviness', 'price', 'spread'),
          min: fc.constantFrom(0, 0.25, 0.5, 1, 2.5),
          max: fc.constantFrom(0.75, 1, 2.5, 3.5, 60),
        },
        { requiredKeys: ['quantity'] },
      ),
      { maxLength: 3 },
    ),
    has: fc.subarray(['Al', 'Cr', 'V'], { maxLength: 2 }),
    without: fc.subarray(['Fe', 'Ni', 'Ti'], { maxLength: 2 }),
    order: fc.constantFrom('rank', 'heaviness', 'price', 'spread'),
    direction: fc.constantFrom('asc' as const, 'desc' as const),
    limit: fc.integer({ min: 1, max: 300 }),
    front: fc.constant(true as const),
  },
  { requiredKeys: ['ranges', 'has', 'without', 'order', 'direction', 'limit'] },
);

const ranksOf = (page: { items: { rank: number }[] }) => page.items.map((item) => item.rank);

for (const way of ['held', 'read'] as const) {
  test(`following the keys gives what filtering and sorting by hand gives (${way})`, () => {
    fc.assert(
      fc.property(queries, (asked) => {
        const ranks: number[] = [];
        let after: string | null = null;
        do {
          const page = tables[way].page(set, after === null ? asked : { ...asked, after });
          expect(page.items.length).toBeLessThanOrEqual(asked.limit);
          ranks.push(...ranksOf(page));
          after = page.next;
        } while (after !== null);
        expect(ranks).toEqual(selected(all, asked));
      }),
      { numRuns: 150, seed: 20270114 },
    );
  });

  test(`a row number leads to the page that starts there (${way})`, () => {
    fc.assert(
      fc.property(queries, fc.integer({ min: 0, max: 700 }), (asked, at) => {
        const page = tables[way].page(set, { ...asked, at });
        expect(ranksOf(page)).toEqual(selected(all, asked).slice(at, at + asked.limit));
      }),
      { numRuns: 100, seed: 20270114 },
    );
  });

  test(`a stream gives all that the query selects, in its order (${way})`, () => {
    fc.assert(
      fc.property(queries, (asked) => {
        const ranks = Array.from(tables[way].stream(set, asked), (one) => one.rank);
        expect(ranks).toEqual(selected(all, asked));
      }),
      { numRuns: 60, seed: 20270114 },
    );
  });
}

test('the last page has no key, and a page that ends exactly at the end has none either', () => {
  expect(tables.held.page(set, query({ limit: 600 })).next).toBeNull();
  expect(tables.held.page(set, query({ limit: 599 })).next).not.toBeNull();
});

const nonsense = ['', 'nonsense', 'bnVsbA', Buffer.from('[1,"","rank","asc",-1]').toString('base64url')];
test.each(nonsense)('"%s" is refused as a key', (after) => {
  expect(() => tables.held.page(set, query({ after }))).toThrow(/is not a key/);
});

test('a key of one order is refused in another', () => {
  const { next } = tables.held.page(set, query({ order: 'price', limit: 5 }));
  const other = query({ order: 'price', direction: 'desc', after: next! });
  expect(() => tables.held.page(set, other)).toThrow(/is a key of a page in another order/);
});

test('a key of one search is refused in another', () => {
  const { next } = tables.held.page(set, query({ limit: 5 }));
  expect(() => tables.held.page(other, query({ after: next! }))).toThrow(
    /is a key of a page of another search/,
  );
});

test('a key is refused with other filters, and taken with the same ones written in another order', () => {
  const ranges = [
    { quantity: 'price', min: 1 },
    { quantity: 'heaviness', min: 1 },
  ];
  const { next } = tables.held.page(set, query({ ranges, has: ['Fe', 'Ni'], limit: 1 }));
  const after = next!;
  const again = query({ ranges: ranges.toReversed(), has: ['Ni', 'Fe'], limit: 1, after });
  expect(tables.held.page(set, again).items).toHaveLength(1);
  const same = { ranges, has: ['Fe', 'Ni'] };
  for (const filters of [{}, { ranges }, { ...same, without: ['Cu'] }, { ...same, front: true as const }]) {
    const asked = query({ ...filters, limit: 1, after });
    expect(() => tables.held.page(set, asked)).toThrow(/is a key of a page with other filters/);
  }
});

test('writing goes on while a stream is being read, and a stream may be left', () => {
  const stream = tables.held.stream(set, query());
  expect(stream.next().value?.rank).toBe(1);
  const { number } = searchTable(connections.main).create(newSearch(), chunks(1));
  expect(stream.next().value?.rank).toBe(2);
  stream.return(undefined);
  expect(number).toBeGreaterThan(2);
});

test('whether a candidate is on the front is told where the search asked for one', () => {
  const items = tables.held.page(set, query({ limit: 8 })).items;
  expect(items.map(({ front }) => front)).toEqual([false, false, false, false, false, false, true, false]);
  expect(tables.held.page(other, query({ limit: 8 })).items[0]).not.toHaveProperty('front');
});
