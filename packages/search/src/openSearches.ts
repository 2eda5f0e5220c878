import type { PriceList } from '@tiegel/elements';
import type { ChunkQueue } from '@tiegel/queue';
import type { Store } from '@tiegel/store';
import { estimates } from './asking/estimate.ts';
import { accept, sizeOf } from './asking/requests.ts';
import { candidateAnswers } from './candidates/candidateAnswers.ts';
import { candidateSweeps } from './candidates/candidateSweeps.ts';
import { distributionsOf } from './distributions/distributionsOf.ts';
import { openImports } from './imports/openImports.ts';
import type { Searches } from './searches.ts';
import { acts } from './watching/acts.ts';
import { endings } from './watching/endings.ts';
import { records } from './watching/records.ts';
import { watchers } from './watching/watchers.ts';
import { work } from './working/work.ts';

/** MAX_POINTS where the configuration says nothing. */
export const DEFAULT_MAX_POINTS = 1e13;

/**
 * What the searches of a process are made of.
 *
 * - `store`: from openStore of packages/store, told `candidateColumns`.
 * - `queue`: how chunks reach workers.
 * - `prices`: the list in force until somebody enters another with `replacePrices` (an entered
 *   one survives restarts and goes before this); null for none. Default: the demonstration list.
 * - `maxPoints`: a search of more grid points is refused with its count.
 * - `takeUp`: whether the unfinished searches of the store go on by themselves; false for who works only on
 *   what it is asked for: the others are left as they are, for `resume`. Default: true.
 * - `warn`: told when a search is paused or failed by what went wrong, not by a person, and when it waits for another
 *   process to write. Left out: nobody is.
 * - `pointsPerChunk`: how many points a worker gets at a time; left out, as many as it scores in a second.
 *
 * Whoever opened store and queue closes them, in this order: searches, queue, store.
 */
export interface SearchesOptions {
  store: Store;
  queue: ChunkQueue;
  prices?: PriceList | null;
  maxPoints?: number;
  takeUp?: boolean;
  warn?: (text: string) => void;
  pointsPerChunk?: number;
}

/** Takes up the unfinished searches of the store and answers to requests until it is closed. */
export async function openSearches(options: SearchesOptions): Promise<Searches> {
  const { store, queue, maxPoints = DEFAULT_MAX_POINTS, takeUp = true, pointsPerChunk = null } = options;
  const stopped = (id: string, reason: string) => options.warn?.(`Search ${id} stands still: ${reason}`);
  const rates = estimates();
  const watching = watchers((id) => ({ view: standing.view(id), sequence: standing.known(id).sequence }));
  const waits = (id: string, reason: string | null) =>
    options.warn?.(reason === null ? `Search ${id} goes on.` : `Search ${id} waits: ${reason}`);
  const working = work(store, queue, { changed: watching.changed, learn: rates.learn, stopped, waits });
  const standing = records(store, working);
  const waiting = endings(watching, working);
  const imports = openImports(store, options);
  const { prices, columns, pairs, behind } = imports;
  const data = () => ({ prices: prices(), columns: columns(), pairs: pairs() });
  const parts = { store, queue, rates, data, behind, maxPoints, pointsPerChunk };

  const found = takeUp ? store.searches.list() : [];
  working.tidy(found.filter(({ state }) => state === 'cancelled'));
  for (const record of found.toReversed()) {
    if (record.state === 'waiting' || record.state === 'running') working.carry(record);
  }

  return {
    ...{ view: standing.view, list: standing.list, imports, prices, columns, pairs },
    ...{ watch: watching.watch, finished: waiting.finished },
    ...acts(store, working, standing, watching.changed),
    ...candidateAnswers(store, standing),
    ...candidateSweeps(store, standing),
    size: (request) => sizeOf(request, parts),
    distributions: (request) => distributionsOf(request, data(), maxPoints),
    async submit(request, { idempotencyKey, schedule } = {}) {
      const { record, created } = await accept(
        request,
        { idempotencyKey: idempotencyKey ?? null, schedule },
        parts,
      );
      if (created) working.carry(record);
      return { id: record.id, created };
    },
    async close() {
      await working.close();
      watching.close();
      waiting.close();
    },
  };
}
