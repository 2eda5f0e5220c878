import { join } from 'node:path';
import { problem } from '@tiegel/contract/terms';
import { type ChunkQueue, embeddedQueue } from '@tiegel/queue';
import type { RedisWorker } from '@tiegel/queue/redis';
import { candidateColumns, openSearches } from '@tiegel/search';
import { openChargeSheets, openMelts, openShortlists, openTokens } from '@tiegel/search/laboratory';
import { openStore } from '@tiegel/store';
import type { Logger } from 'pino';
import type { Configuration } from './configuration.ts';
import { attachmentFiles } from './melts/attachmentFiles.ts';
import type { Parts } from './parts.ts';

const threadFile = new URL(import.meta.resolve('@tiegel/search/scoringThread'));
const pages = join(import.meta.dirname, '../../web/dist');
/** What a worker of this process may still finish before the rest goes back to the queue. */
const finishMs = 2000;
/** How long a request waits for another process that writes; after that it is refused. */
const writePatienceMs = 5000;

/** Opens ledger, queue and searches as configured. `close` ends them in the order that loses nothing. */
export async function openParts(
  { dataFolder, redisUrl, workers, maxPoints, openNetwork, hostNames, asksForTokens }: Configuration,
  logger: Logger,
): Promise<{ parts: Parts; close: () => Promise<void> }> {
  const file = join(dataFolder, 'tiegel.sqlite');
  const store = openStore({ file, columns: candidateColumns });
  const tokens = openTokens(store.tokens);
  if (asksForTokens && tokens.list().every(({ withdrawnAt }) => withdrawnAt !== null)) {
    store.close();
    throw problem('access/nobody', undefined, '/TOKENS');
  }
  const log = (level: 'info' | 'warn' | 'error', text: string) => logger[level](text);
  let queue: ChunkQueue;
  let worker: RedisWorker | null = null;
  if (redisUrl === null) {
    queue = embeddedQueue({ threadFile, threads: workers });
  } else {
    const { redisQueue, redisWorker } = await import('@tiegel/queue/redis');
    queue = redisQueue({ url: redisUrl, log });
    if (workers > 0) worker = redisWorker({ url: redisUrl, threadFile, threads: workers, log });
  }
  const searches = await openSearches({ store, queue, maxPoints, warn: (text) => log('warn', text) });
  const chargeSheets = openChargeSheets(store.chargeSheets);
  return {
    parts: {
      searches,
      shortlists: openShortlists(store.shortlists, searches),
      chargeSheets,
      melts: openMelts(store.melts, chargeSheets),
      attachments: { table: store.melts, files: attachmentFiles(join(dataFolder, 'attachments')) },
      workers: () => queue.workers(),
      async writable() {
        if (!(await store.untilFree({ atMostMs: writePatienceMs }))) throw problem('store/busy', { file });
      },
      openNetwork,
      tokens: asksForTokens ? tokens : null,
      hostNames,
      pages,
    },
    async close() {
      await searches.close();
      await worker?.close(finishMs);
      await queue.close();
      store.close();
    },
  };
}
