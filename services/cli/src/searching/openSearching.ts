import { type PriceList, readPairValues } from '@tiegel/elements';
import { type ChunkQueue, embeddedQueue } from '@tiegel/queue';
import { candidateColumns, openSearches, type Searches } from '@tiegel/search';
import { openStore } from '@tiegel/store';
import { readColumns } from '../input/columnOption.ts';
import { readPrices } from '../input/readPrices.ts';
import { placeOf, readText } from '../input/readText.ts';
import { readSettings, type Settings } from './settings.ts';

/** Options of every command that knows searches. */
export interface SearchingOptions {
  workers?: number;
  database?: string;
  prices?: string;
  /** a file with pair values of one's own */
  pairs?: string;
  /** files with element columns of one's own */
  column?: string[];
}

/** The same life of a search as in the service, in this process, for as long as a command runs. */
export interface Searching {
  searches: Searches;
  prices: PriceList | null;
  close(): Promise<void>;
}

const threadFile = new URL(import.meta.resolve('@tiegel/search/scoringThread'));

/**
 * Opens database (a temporary one unless named), queue and searches. What --prices, --pairs and
 * --column give is put in force in the database.
 */
export async function openSearching({
  workers,
  database,
  prices,
  pairs,
  column,
}: SearchingOptions): Promise<Searching> {
  const settings = readSettings(process.env);
  const list = readPrices(prices);
  const columns = readColumns(column);
  const pairText = pairs === undefined ? null : readText(pairs);
  // What is wrong with it is told before anything is opened.
  if (pairText !== null) readPairValues(pairText);
  const store = openStore({
    file: database === undefined ? null : placeOf(database),
    columns: candidateColumns,
  });
  const release = closeAtExit(() => store.close());
  const queue = await queueOf(settings, workers);
  const searches = await openSearches({ store, queue, prices: list, maxPoints: settings.maxPoints });
  if (prices !== undefined) searches.imports.replacePrices(list);
  if (pairText !== null) searches.imports.enter('pairs', pairText);
  for (const one of columns) searches.imports.enterColumn(one);
  return {
    searches,
    prices: searches.prices(),
    async close() {
      await searches.close();
      await queue.close();
      release();
    },
  };
}

async function queueOf({ redisUrl, workers }: Settings, asked: number | undefined): Promise<ChunkQueue> {
  if (redisUrl === null) return embeddedQueue({ threadFile, threads: asked ?? workers });
  if (asked !== undefined)
    console.error('--workers is not used: REDIS_URL leaves the work to worker processes.');
  const { redisQueue } = await import('@tiegel/queue/redis');
  return redisQueue({ url: redisUrl, log: (_level, text) => console.error(text) });
}

/** Closes a store also where the process ends early, so that no temporary database is left behind. */
function closeAtExit(close: () => void): () => void {
  const closeOnce = () => {
    process.off('exit', closeOnce);
    close();
  };
  process.on('exit', closeOnce);
  return closeOnce;
}
