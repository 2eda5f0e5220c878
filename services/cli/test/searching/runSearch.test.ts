import { embeddedQueue } from '@tiegel/queue';
import { candidateColumns, openSearches } from '@tiegel/search';
import { openStore } from '@tiegel/store';
import { expect, test } from 'vitest';
import { runSearch } from '../../src/searching/runSearch.ts';
import { faultsOf } from '../faultsOf.ts';

test('a search that fails ends the command with a fault', async () => {
  const store = openStore({ file: null, columns: candidateColumns });
  const threadFile = new URL('../fixtures/brokenThread.ts', import.meta.url);
  const queue = embeddedQueue({ threadFile, threads: 1 });
  const searches = await openSearches({ store, queue });
  const request = {
    elements: { pool: ['Co', 'Ni'] },
    components: 2,
    fractions: { step: 10 },
    rank: [{ quantity: 'density', prefer: 'low' }],
  };
  expect(await faultsOf(() => runSearch(searches, request))).toEqual(['command/search-ended']);
  await searches.close();
  await queue.close();
  store.close();
});
