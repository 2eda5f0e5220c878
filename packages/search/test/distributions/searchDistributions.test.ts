import type { JoinedStore } from '@tiegel/store';
import { expect, test } from 'vitest';
import { checkSearch } from '../../src/asking/check.ts';
import { searchDistributions } from '../../src/distributions/searchDistributions.ts';

const asked = {
  elements: { pool: ['Co', 'Cr', 'Fe', 'Ni'] },
  components: 3,
  fractions: { step: 10 },
  rank: [{ quantity: 'density', prefer: 'low' }],
};
/** A store that has a single search. */
function storeOf(specification: object): JoinedStore {
  const { plan } = checkSearch(specification, { prices: null }, 1e6);
  return { searches: { plan: () => plan } } as unknown as JoinedStore;
}
const store = storeOf(asked);
const quantities = ['density', 'omega', 'sizeMismatch', 'meltingTemperature'];

test('others are answered between two quantities', async () => {
  async function* kept() {
    yield { ranks: [1, 2], values: quantities.map(() => [1, 2]), systems: [], parts: [] };
  }
  let turns = 0;
  let over = false;
  const count = () => {
    turns += 1;
    if (!over) setImmediate(count);
  };
  setImmediate(count);
  const { meeting, quantities: found } = await searchDistributions(store, { number: 1, quantities, kept });
  over = true;
  expect(turns).toBeGreaterThanOrEqual(quantities.length);
  expect({ meeting, ids: found.map(({ quantity }) => quantity) }).toEqual({ meeting: 2, ids: quantities });
});

test('a kept candidate without a value is counted as missing, and lies in no bin', async () => {
  async function* kept() {
    yield { ranks: [1, 2, 5], values: quantities.map(() => [7, null, 8]), systems: [], parts: [] };
    yield { ranks: [9], values: quantities.map(() => [null]), systems: [], parts: [] };
  }
  const found = await searchDistributions(store, { number: 1, quantities, kept });
  expect(found.meeting).toBe(4);
  for (const { kept: spread } of found.quantities) {
    expect(spread.missing).toBe(2);
    expect(spread.counts.reduce((sum, count) => sum + count, spread.below + spread.above)).toBe(2);
  }
});

test('of a small grid the shares are exact, and what passes lies on the right side of the limit', async () => {
  async function* kept() {}
  const limit = 8.05;
  const limited = storeOf({ ...asked, limits: [{ quantity: 'density', max: limit }] });
  const found = await searchDistributions(limited, { number: 1, quantities: ['density'], kept });
  // 4 sets of three elements, each with 9 · 8 / 2 ways to share out ten parts.
  expect(found).toMatchObject({ sample: 144, exact: true, error: 0 });
  const [{ edges, grid, passing }] = found.quantities as [(typeof found.quantities)[number]];
  const within = (counts: readonly number[], isMeant: (bin: number) => boolean) =>
    counts.reduce((sum, count, bin) => sum + (isMeant(bin) ? count : 0), 0);
  const isAbove = (bin: number) => edges[bin]! > limit;
  const isBelow = (bin: number) => edges[bin + 1]! < limit;
  expect(within(grid!.counts, isAbove)).toBeGreaterThan(10);
  expect(within(passing!.counts, isAbove)).toBe(0);
  expect(within(passing!.counts, isBelow)).toBe(within(grid!.counts, isBelow));
  expect(within(passing!.counts, () => true)).toBe(Math.round(found.passed * 144));
});
