import { isDeepStrictEqual } from 'node:util';
import { problem, type Size } from '@tiegel/contract';
import type { ChunkQueue } from '@tiegel/queue';
import type { SearchRecord, Store } from '@tiegel/store';
import { checkForm, checkSearch } from './check.ts';
import type { Estimates } from './estimate.ts';
import type { LabData } from './labData.ts';
import { secondsPerChunk, start } from './start.ts';

/** What requests are answered from. */
export interface RequestParts {
  store: Store;
  queue: ChunkQueue;
  rates: Estimates;
  data: () => LabData;
  maxPoints: number;
  /** null: what one worker scores in a second */
  pointsPerChunk: number | null;
}

/** How large a search is, before it runs. Throws as checkSearch does. */
export async function sizeOf(request: unknown, parts: RequestParts): Promise<Size> {
  const checked = checkSearch(request, parts.data(), parts.maxPoints);
  const { systems, points, question, notices } = checked;
  const workers = await parts.queue.workers();
  const seconds = workers === 0 ? null : points / (parts.rates.pointsPerSecond(checked) * workers);
  return { systems, points, seconds, workers, question, notices };
}

/**
 * Keeps a request as a search of the ledger, or finds the one that its key made before. Throws as
 * checkSearch does, and search/key-reused.
 */
export async function accept(
  request: unknown,
  idempotencyKey: string | null,
  parts: RequestParts,
): Promise<{ record: SearchRecord; created: boolean }> {
  const since = performance.now();
  const workers = await parts.queue.workers();
  // From here on nothing waits: two requests with one key cannot both find nothing.
  const data = parts.data();
  const before = madeBefore(request, idempotencyKey, data, parts.store);
  if (before !== null) return { record: before, created: false };
  const checked = checkSearch(request, data, parts.maxPoints);
  const pointsPerChunk =
    parts.pointsPerChunk ?? parts.rates.pointsPerSecond(checked) * secondsPerChunk(workers);
  const record = start(checked, parts.store, {
    prices: data.prices,
    idempotencyKey,
    pointsPerChunk,
    workers,
    since,
  });
  return { record, created: true };
}

/** The search that a key made before, if it did; a key that comes with another question is refused. */
function madeBefore(request: unknown, key: string | null, data: LabData, store: Store): SearchRecord | null {
  const { specification } = checkForm(request, data);
  const record = key === null ? null : store.searches.findByIdempotencyKey(key);
  if (record !== null && !isDeepStrictEqual(record.specification, specification)) {
    throw problem('search/key-reused', { id: record.id });
  }
  return record;
}
