import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeAll, expect, test } from 'vitest';
import type { CandidateSet } from '../../src/candidates/candidateSet.ts';
import { type CandidateTable, candidateTable } from '../../src/candidates/candidateTable.ts';
import { type Connections, openConnections } from '../../src/sharing/connections.ts';
import { searchTable } from '../../src/tables/searches.ts';
import { batchOf, candidates, query, selected } from '../fixtures/candidates.ts';
import { columns } from '../fixtures/files.ts';
import { noting } from '../fixtures/queryPlans.ts';
import { chunks, newSearch } from '../fixtures/searches.ts';

/** STORE_ROWS=1000000 runs this at the size that the program is meant for. */
const rows = Number(process.env.STORE_ROWS ?? 100_000);
let connections: Connections;
let table: CandidateTable;
let set: CandidateSet;
let plans: () => string[];

const page = (change: Parameters<typeof query>[0]) => table.page(set, query(change));
const all = [...candidates(rows)];

beforeAll(() => {
  const folder = mkdtempSync(join(tmpdir(), 'store-test-'));
  connections = openConnections(join(folder, 'searches.db'));
  const noted = noting(connections.main);
  plans = noted.plans;
  table = candidateTable({ ...connections, main: noted.connection }, columns);
  const { number: search } = searchTable(connections.main).create(newSearch(), chunks(1));
  set = { search, kept: rows, columns };
  for (let first = 0; first < rows; first += 4096)
    table.insert(search, batchOf(all.slice(first, first + 4096)));
  return () => {
    connections.close();
    rmSync(folder, { recursive: true });
  };
}, 600_000);

test('an order is made in steps between which others can be answered, and once', () => {
  const asked = query({ order: 'heaviness', direction: 'desc' });
  expect([...table.prepare(set, asked)].length).toBeGreaterThan(4);
  expect([...table.prepare(set, asked)].length).toBeLessThan(3);
  // The other way round it is turned, not sorted.
  expect([...table.prepare(set, { ...asked, direction: 'asc' })].length).toBeLessThan(2 + rows / 250_000);
});

test.each([
  { order: 'price' },
  { order: 'price', direction: 'desc' },
  { order: 'spread', ranges: [{ quantity: 'price', min: 20, max: 90 }], has: ['Fe'], without: ['Al'] },
  { ranges: [{ quantity: 'spread', max: 0.5 }], direction: 'desc' },
  { order: 'heaviness', ranges: [{ quantity: 'spread', max: 20 / rows }] },
] as const)('any order and any filters give what sorting by hand gives: %o', (change) => {
  const asked = query(change as unknown as Parameters<typeof query>[0]);
  const expected = selected(all, asked);
  expect(page(asked).items.map(({ rank }) => rank)).toEqual(expected.slice(0, 100));
  const at = Math.floor(expected.length * 0.9);
  expect(page({ ...asked, at }).items.map(({ rank }) => rank)).toEqual(expected.slice(at, at + 100));
});

// Half of all stand close enough for a page to be found where it begins, a hundredth and less do not.
test.each([0.5, 0.01, 0.0005])('pages follow one another where %f of all meet a filter', (share) => {
  const asked = query({ order: 'price', ranges: [{ quantity: 'spread', max: share }] });
  const expected = selected(all, asked);
  let found: string | null = null;
  for (let at = 0; at < Math.min(500, expected.length); at += 100) {
    const { items, next } = page(found === null ? asked : { ...asked, after: found });
    expect(items.map(({ rank }) => rank)).toEqual(expected.slice(at, at + 100));
    found = next;
    expect(next === null).toBe(at + 100 >= expected.length);
  }
});

test('what is read of the database is found by an index, and nothing is sorted there', () => {
  plans();
  page({ order: 'price', ranges: [{ quantity: 'spread', min: 0.1 }] });
  page({ order: 'spread', at: rows / 2 });
  table.find(set, all[0]!.symbols, all[0]!.parts);
  for (const step of plans()) expect(step).toMatch(/^(SEARCH \w+ USING|SCALAR SUBQUERY)/);
});
