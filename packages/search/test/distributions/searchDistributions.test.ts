import type { JoinedStore } from '@tiegel/store';
import { expect, test } from 'vitest';
import { checkSearch } from '../../src/asking/check.ts';
import { searchDistributions } from '../../src/distributions/searchDistributions.ts';

const { plan } = checkSearch(
  {
    elements: { pool: ['Co', 'Cr', 'Fe', 'Ni'] },
    components: 3,
    fractions: { step: 10 },
    rank: [{ quantity: 'density', prefer: 'low' }],
  },
  { prices: null },
  1e6,
);
const store = { searches: { plan: () => plan } } as unknown as JoinedStore;
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
