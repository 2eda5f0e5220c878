import { readFileSync } from 'node:fs';
import type { CandidateQuery } from '@tiegel/contract';
import type { ChunkQueue } from '@tiegel/queue';
import { candidateColumns, openSearches, type Searches } from '@tiegel/search';
import { openStore } from '@tiegel/store';
import { prices, type Variant, written } from './variant.ts';

const everything: CandidateQuery = {
  ranges: [],
  has: [],
  without: [],
  order: 'rank',
  direction: 'asc',
  limit: 1000,
};

/** The life of a search in this process, on a queue; all searches in one database. */
export function searchesVariant(openQueue: () => ChunkQueue): Variant {
  const store = openStore({ file: null, columns: candidateColumns });
  const queue = openQueue();
  let opened: Promise<Searches> | undefined;
  return {
    async find(file) {
      opened ??= openSearches({ store, queue, prices });
      const searches = await opened;
      const { id } = await searches.submit(JSON.parse(readFileSync(file, 'utf8')));
      const { counts, state, reason } = await searches.finished(id);
      if (state !== 'done') throw new Error(`${state}: ${reason}`);
      const rows = [...searches.export(id, everything).rows];
      return { counts, candidates: rows.map(({ composition, score }) => [written(composition), score]) };
    },
    async close() {
      await (await opened)?.close();
      await queue.close();
      store.close();
    },
  };
}
