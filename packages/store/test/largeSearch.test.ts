import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeAll, expect, test } from 'vitest';
import type { CandidateSet } from '../src/candidateSource.ts';
import { type CandidateTable, candidateTable } from '../src/candidateTable.ts';
import { type Connections, openConnections } from '../src/connections.ts';
import { searchTable } from '../src/searches.ts';
import { candidates, query } from './fixtures/candidates.ts';
import { columns } from './fixtures/files.ts';
import { noting } from './fixtures/queryPlans.ts';
import { chunks, newSearch } from './fixtures/searches.ts';

/** STORE_ROWS=1000000 runs this at the size that the program is meant for. */
const rows = Number(process.env.STORE_ROWS ?? 200_000);
let connections: Connections;
let table: CandidateTable;
let set: CandidateSet;
let plans: () => string[];

const page = (change: Parameters<typeof query>[0]) => table.page(set, query(change));

beforeAll(() => {
  const folder = mkdtempSync(join(tmpdir(), 'store-test-'));
  connections = openConnections(join(folder, 'searches.db'));
  const noted = noting(connections.main);
  plans = noted.plans;
  table = candidateTable({ ...connections, main: noted.connection }, columns);
  const { number: search } = searchTable(connections.main).create(newSearch(), chunks(1));
  set = { search, kept: rows, columns };
  const all = candidates(rows);
  for (let stored = 0; stored < rows; stored += 5_000) {
    table.insert(
      search,
      Array.from({ length: 5_000 }, () => all.next().value!),
    );
  }
  table.order(set, 'price');
  page({ order: 'price', direction: 'desc' });
  plans();
  return () => {
    connections.close();
    rmSync(folder, { recursive: true });
  };
}, 600_000);

/** Every step since the last look seeks in an index, and nothing is sorted; returns the steps. */
function indexOnly(): string[] {
  const found = plans();
  expect(found.length).toBeGreaterThan(0);
  for (const step of found) expect(step).toMatch(/^SEARCH \w+ USING (COVERING )?(INDEX|PRIMARY KEY)/);
  return found;
}

test('a page in the order of a quantity is read from its place on, both ways', () => {
  for (const direction of ['asc', 'desc'] as const) {
    const first = page({ order: 'price', direction });
    expect(first.items).toHaveLength(100);
    expect(page({ order: 'price', direction, after: first.next! }).items).toHaveLength(100);
    expect(indexOnly()).toContain('SEARCH place USING PRIMARY KEY (ordering=? AND place>? AND place<?)');
  }
});

test('a page ordered by one quantity and filtered by it, by another and by elements comes from an index', () => {
  const asked = {
    order: 'price',
    ranges: [
      { quantity: 'price', min: 20, max: 90 },
      { quantity: 'heaviness', max: 2 },
    ],
    has: ['Fe'],
    without: ['Al'],
  };
  expect(page(asked).items).toHaveLength(100);
  indexOnly();
});

test('a page by rank, filtered, comes from the index of ranks', () => {
  expect(page({ ranges: [{ quantity: 'spread', max: 0.5 }], has: ['Cr'] }).items).toHaveLength(100);
  expect(indexOnly()).toEqual([
    'SEARCH candidate USING INDEX candidate_rank (search=? AND rank>? AND rank<?)',
  ]);
});

test('a row number far inside is gone to directly', () => {
  expect(page({ at: rows / 2 }).items[0]?.rank).toBe(rows / 2 + 1);
  expect(page({ order: 'price', at: rows / 2 }).items).toHaveLength(100);
  indexOnly();
});

test('an order that nobody asked for yet is made with the first page, and once', () => {
  const sorts = () => plans().filter((step) => step.startsWith('USE TEMP B-TREE')).length;
  expect(page({ order: 'heaviness' }).items).toHaveLength(100);
  expect(sorts()).toBe(1);
  expect(page({ order: 'heaviness', at: 500 }).items).toHaveLength(100);
  expect(sorts()).toBe(0);
});

test('a narrow range on a quantity that has an order is read by it, whatever the order of the page', () => {
  const narrow = { ranges: [{ quantity: 'price', min: 50, max: 50 }], without: ['Al', 'Cr', 'Fe', 'Mn'] };
  const found = page(narrow).items;
  expect(found.length).toBeGreaterThan(0);
  expect(found.length).toBeLessThan(100);
  const steps = plans();
  expect(steps).toContain('SEARCH place USING PRIMARY KEY (ordering=? AND place>? AND place<?)');
  expect(steps).not.toContain('SEARCH candidate USING INDEX candidate_rank (search=?)');
});

test('filters that nothing narrows and few rows meet read the rows of the search once', () => {
  const asked = { order: 'price', ranges: [{ quantity: 'spread', max: 20 / rows }] };
  expect(page(asked).items.length).toBeLessThan(100);
  expect(plans()).toContain('SEARCH candidate USING INDEX candidate_rank (search=?)');
});

test('a composition is found by halving', () => {
  const all = [...candidates(3)];
  table.find(set, all[0]!.symbols, all[0]!.parts);
  plans();
  expect(all.map((one) => table.find(set, one.symbols, one.parts)?.rank)).toEqual([1, 2, 3]);
  indexOnly();
});
