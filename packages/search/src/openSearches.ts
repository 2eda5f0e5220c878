import type { PriceList } from '@tiegel/elements';
import type { ChunkQueue } from '@tiegel/queue';
import type { Store } from '@tiegel/store';
import type { Searches } from './searches.ts';

/** MAX_POINTS where the configuration says nothing. */
export const DEFAULT_MAX_POINTS = 1e13;

/**
 * What the searches of a process are made of.
 *
 * - `store`: from openStore of packages/store, told the ids of `quantities` of packages/screening.
 * - `queue`: how chunks reach workers.
 * - `prices`: the list in force until somebody enters another with `replacePrices` (an entered
 *   one survives restarts and goes before this); null for none. Default: the demonstration list.
 * - `maxPoints`: a search of more grid points is refused with its count.
 *
 * Whoever opened store and queue closes them, in this order: searches, queue, store.
 */
export interface SearchesOptions {
  store: Store;
  queue: ChunkQueue;
  prices?: PriceList | null;
  maxPoints?: number;
}

/** Takes up every unfinished search of the store and answers to requests until it is closed. */
export async function openSearches(_options: SearchesOptions): Promise<Searches> {
  throw new Error('being written');
}
