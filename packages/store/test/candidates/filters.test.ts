import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { CandidateSet } from '../../src/candidates/candidateSet.ts';
import { type CandidateTable, candidateTable } from '../../src/candidates/candidateTable.ts';
import { type Connections, openConnections } from '../../src/sharing/connections.ts';
import { searchTable } from '../../src/tables/searches.ts';
import { batchOf, candidates, query, selected } from '../fixtures/candidates.ts';
import { columns } from '../fixtures/files.ts';
import { chunks, newSearch } from '../fixtures/searches.ts';

const all = [...candidates(400)].map((one) => ({ ...one, front: one.rank % 5 === 0 }));
const values = [...new Set(all.flatMap(({ quantities }) => Object.values(quantities)))].filter(
  (value) => value !== null,
);

/** Ends lie on values, between them, outside of all, and crossed. */
const end = fc.oneof(fc.constantFrom(...values), fc.double({ min: -1, max: 130, noNaN: true }));
const filters = fc.record({
  ranges: fc.array(
    fc.record({ quantity: fc.constantFrom(...columns), min: end, max: end }, { requiredKeys: ['quantity'] }),
    { maxLength: 3 },
  ),
  // Some are pieces of symbols, and Zr is in no candidate.
  has: fc.subarray(['Al', 'Cr', 'V', 'N', 'Zr'], { maxLength: 2 }),
  without: fc.subarray(['Al', 'Fe', 'Ni', 'i', 'Zr'], { maxLength: 3 }),
});
const asked = fc
  .tuple(filters, fc.boolean())
  .map(([filter, front]) => query({ ...filter, ...(front && { front: true as const }) }));

const folder = mkdtempSync(join(tmpdir(), 'store-test-'));
let connections: Connections;
/** As they are stored, and as they were stored once: without columns, and without a front. */
let sets: Record<'with columns' | 'without', CandidateSet>;
/** All columns held, and none. */
let tables: CandidateTable[];

beforeAll(() => {
  connections = openConnections(join(folder, 'searches.db'));
  tables = [candidateTable(connections, columns), candidateTable(connections, columns, 0)];
  const searches = searchTable(connections.main);
  const [first, second] = [1, 2].map(() => searches.create(newSearch(), chunks(1)).number);
  tables[0]!.insert(first!, batchOf(all));
  tables[0]!.insert(second!, batchOf(all.map(({ front: _, ...one }) => one)));
  connections.main.prepare('delete from candidate_block where search = ?').run(second!);
  const kept = { kept: all.length, columns };
  sets = { 'with columns': { search: first!, ...kept }, without: { search: second!, ...kept } };
});
afterAll(() => {
  connections.close();
  rmSync(folder, { recursive: true });
});

// Pages and exports test columns in memory, sweeps and counts ask SQLite: see meeting.ts and condition.ts.
test.each(['with columns', 'without'] as const)(
  'a filter lets the same candidates through in memory as in SQLite, those that it should (%s)',
  (way) => {
    const rows = way === 'without' ? all.map((one) => ({ ...one, front: false })) : all;
    fc.assert(
      fc.property(asked, (filter) => {
        const expected = selected(rows, filter);
        for (const table of tables) {
          const inMemory = Array.from(table.stream(sets[way], filter), ({ rank }) => rank);
          const inSql = [...table.values(sets[way], filter, { quantities: [] })].flatMap((one) => one.ranks);
          const counted = [...table.counts(sets[way], filter)].reduce((sum, part) => sum + part, 0);
          expect(inMemory).toEqual(expected);
          expect(inSql).toEqual(expected);
          expect(counted).toBe(expected.length);
        }
      }),
      { numRuns: 150, seed: 20261130 },
    );
  },
);
