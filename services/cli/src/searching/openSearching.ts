import { type OwnColumn, type PriceList, readPairValues } from '@tiegel/elements';
import { type ChunkQueue, embeddedQueue } from '@tiegel/queue';
import type { Searches } from '@tiegel/search';
import { readColumns } from '../input/columnOption.ts';
import { readPrices } from '../input/readPrices.ts';
import { placeOf, readText } from '../input/readText.ts';
import { readSettings, type Settings } from './settings.ts';
import { threadFile } from './threadFile.ts';

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

/** The same life of a search as in the service, in this process, for as long as a command runs; it works on none but those it is asked for. */
export interface Searching {
  searches: Searches;
  close(): Promise<void>;
}

/**
 * Opens queue, database (a temporary one unless named) and searches. What --prices, --pairs and
 * --column give is put in force in the database.
 */
export async function openSearching(options: SearchingOptions): Promise<Searching> {
  const settings = readSettings(process.env);
  const given = readGiven(options);
  // First of all: its threads load what they need while this one does.
  const queue = await queueOf(settings, options.workers);
  try {
    return await searchingOn(queue, given, { ...options, maxPoints: settings.maxPoints });
  } catch (error) {
    await queue.close();
    throw error;
  }
}

interface Given {
  list: PriceList;
  columns: readonly OwnColumn[];
  pairText: string | null;
}

/** What the files that the options name hold; what is wrong with it is told before anything is opened. */
function readGiven({ prices, pairs, column }: SearchingOptions): Given {
  const pairText = pairs === undefined ? null : readText(pairs);
  if (pairText !== null) readPairValues(pairText);
  return { list: readPrices(prices), columns: readColumns(column), pairText };
}

async function searchingOn(
  queue: ChunkQueue,
  { list, columns, pairText }: Given,
  { database, prices, maxPoints }: SearchingOptions & Pick<Settings, 'maxPoints'>,
): Promise<Searching> {
  const { openStore } = await import('@tiegel/store');
  const { candidateColumns, openSearches } = await import('@tiegel/search');
  const store = openStore({
    file: database === undefined ? null : placeOf(database),
    columns: candidateColumns,
  });
  const release = closeAtExit(() => store.close());
  const searches = await openSearches({
    ...{ store, queue, prices: list, takeUp: false },
    ...(maxPoints && { maxPoints }),
  });
  if (prices !== undefined) searches.imports.replacePrices(list);
  if (pairText !== null) searches.imports.enter('pairs', pairText);
  for (const one of columns) searches.imports.enterColumn(one);
  return {
    searches,
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
