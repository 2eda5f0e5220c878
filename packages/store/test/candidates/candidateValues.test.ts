import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { beforeAll, expect, test } from 'vitest';
import type { CandidateSet } from '../../src/candidates/candidateSet.ts';
import { type CandidateTable, candidateTable } from '../../src/candidates/candidateTable.ts';
import type { CandidateColumns, ColumnsAsked } from '../../src/candidates/candidateValues.ts';
import { type Connections, openConnections } from '../../src/sharing/connections.ts';
import { searchTable } from '../../src/tables/searches.ts';
import { batchOf, candidates, query, selected } from '../fixtures/candidates.ts';
import { columns } from '../fixtures/files.ts';
import { noting } from '../fixtures/queryPlans.ts';
import { chunks, newSearch } from '../fixtures/searches.ts';

/** More than are read at once. */
const all = [...candidates(45_000)];
let connections: Connections;
let table: CandidateTable;
let set: CandidateSet;
let plans: () => string[];

beforeAll(() => {
  const folder = mkdtempSync(join(tmpdir(), 'store-test-'));
  connections = openConnections(join(folder, 'searches.db'));
  const noted = noting(connections.main);
  plans = noted.plans;
  table = candidateTable({ ...connections, main: noted.connection }, columns);
  const searches = searchTable(connections.main);
  const [first, second] = [1, 2].map(() => searches.create(newSearch(), chunks(1)).number);
  table.insert(first!, batchOf(all));
  table.insert(second!, batchOf([...candidates(300, 2)]));
  set = { search: first!, kept: all.length, columns };
  return () => {
    connections.close();
    rmSync(folder, { recursive: true });
  };
});

const filters = fc.record({
  ranges: fc.array(
    fc.record(
      { quantity: fc.constantFrom(...columns), min: fc.constantFrom(0.25, 1), max: fc.constantFrom(0.9, 60) },
      { requiredKeys: ['quantity'] },
    ),
    { maxLength: 2 },
  ),
  has: fc.subarray(['Al', 'Cr', 'V'], { maxLength: 2 }),
  without: fc.subarray(['Fe', 'Ni'], { maxLength: 1 }),
});

const read = (asked: Parameters<typeof query>[0], what: ColumnsAsked): CandidateColumns[] => [
  ...table.values(set, query(asked), what),
];

test('the values of those that meet the filters come by rank, with nothing lost between two stretches', () => {
  fc.assert(
    fc.property(filters, (asked) => {
      const stretches = read(asked, { quantities: ['price', 'spread'] });
      const ranks = stretches.flatMap((one) => one.ranks);
      expect(ranks).toEqual(selected(all, query(asked)));
      for (const [place, id] of (['price', 'spread'] as const).entries()) {
        const values = stretches.flatMap((one) => one.values[place]!);
        expect(values).toEqual(ranks.map((rank) => all[rank - 1]!.quantities[id]));
      }
    }),
    { numRuns: 12 },
  );
});

test('every tenth rank is taken, and all of the best', () => {
  const ranks = read({}, { quantities: [], every: 10, best: 25 }).flatMap((one) => one.ranks);
  expect(ranks.slice(0, 28)).toEqual([...Array.from({ length: 25 }, (_, place) => place + 1), 31, 41, 51]);
  expect(ranks).toHaveLength(4_500 + 25 - 3);
  expect(ranks.at(-1)).toBe(44_991);
});

test('compositions come as symbols and parts of the grid', () => {
  const [first] = read({}, { quantities: [], compositions: true });
  expect(first!.systems[7]).toBe(all[7]!.symbols.join(' '));
  expect(first!.parts[7]).toBe(all[7]!.parts.join(' '));
});

test('those that meet the filters are counted', () => {
  fc.assert(
    fc.property(filters, (asked) => {
      const count = [...table.counts(set, query(asked))].reduce((sum, part) => sum + part, 0);
      expect(count).toBe(selected(all, query(asked)).length);
    }),
    { numRuns: 12 },
  );
});

test('a sample and a count seek along the index of ranks and sort nothing', () => {
  plans();
  read({ has: ['Cr'] }, { quantities: ['price'], every: 7 });
  for (const _ of table.counts(set, query({ has: ['Cr'] })));
  const steps = plans();
  expect(steps.length).toBe(2);
  for (const step of steps)
    expect(step).toBe('SEARCH candidate USING INDEX candidate_rank (search=? AND rank>? AND rank<?)');
});

test('others can write between two stretches', () => {
  const stretches = table.values(set, query(), { quantities: ['price'] });
  stretches.next();
  expect(() => table.insert(set.search, batchOf([{ ...all[0]!, rank: all.length + 1 }]))).not.toThrow();
  expect(table.clear(99, 1)).toBe(0);
  stretches.return(undefined);
});
