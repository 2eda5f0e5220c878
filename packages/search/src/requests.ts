import { isDeepStrictEqual } from 'node:util';
import type { Schedule, Size } from '@tiegel/contract';
import { problem } from '@tiegel/contract/terms';
import { isPruned } from '@tiegel/engine';
import type { ChunkQueue } from '@tiegel/queue';
import type { SearchRecord, Store } from '@tiegel/store';
import { type CheckedSearch, checkForm, checkSearch } from './check.ts';
import type { Estimates } from './estimate.ts';
import type { LabData } from './labData.ts';
import {
  isOneChunk,
  pointsOfKeepingChunk,
  pointsOfPrunedChunk,
  pointsOfShortChunk,
  secondsPerChunk,
  start,
} from './start.ts';

/** What requests are answered from. */
export interface RequestParts {
  store: Store;
  queue: ChunkQueue;
  rates: Estimates;
  data: () => LabData;
  /** numbers of the imports in the data of a search that reads these columns */
  behind: (columns: readonly string[]) => number[];
  maxPoints: number;
  /** null: what one worker scores in a second */
  pointsPerChunk: number | null;
}

/** How large a search is, before it runs. Throws as checkSearch does. */
export async function sizeOf(request: unknown, parts: RequestParts): Promise<Size> {
  const checked = checkSearch(request, parts.data(), parts.maxPoints);
  const { systems, points, question, notices } = checked;
  const workers = await parts.queue.workers();
  const atMost = isPruned(checked.plan.specification);
  const seconds = workers === 0 ? null : secondsOf(checked, atMost, workers, parts.rates);
  return { systems, points, seconds, atMost, workers, question, notices };
}

function secondsOf(checked: CheckedSearch, atMost: boolean, present: number, rates: Estimates): number {
  const workers = workersFor(checked, present);
  return atMost
    ? rates.secondsAtMost(checked, workers)
    : checked.points / (rates.pointsPerSecond(checked) * workers);
}

/** How many of the workers that are present a search will have. */
function workersFor({ points, plan }: CheckedSearch, present: number): number {
  return isOneChunk(points, present, plan.specification) ? Math.min(1, present) : present;
}

/** How many points a chunk has: what a worker scores in a second, or, where it leaves out most, a share of them all; fewer where all of them may be kept. */
function chunkSize(checked: CheckedSearch, workers: number, rates: Estimates): number {
  const { points, plan } = checked;
  const short = pointsOfShortChunk(points, workers, plan.specification);
  if (isPruned(plan.specification)) return short ?? pointsOfPrunedChunk(points, workers);
  return Math.min(
    short ?? rates.roughPointsPerSecond(checked, workers) * secondsPerChunk(workers),
    pointsOfKeepingChunk(points, plan.specification.keep),
  );
}

/**
 * Keeps a request as a search of the ledger, or finds the one that its key made before. Throws as
 * checkSearch does, and search/key-reused.
 */
export async function accept(
  request: unknown,
  { idempotencyKey, schedule }: { idempotencyKey: string | null; schedule: Schedule | undefined },
  parts: RequestParts,
): Promise<{ record: SearchRecord; created: boolean }> {
  const since = performance.now();
  const workers = await parts.queue.workers();
  // From here on nothing waits: two requests with one key cannot both find nothing.
  const data = parts.data();
  const before = madeBefore(request, idempotencyKey, data, parts.store);
  if (before !== null) return { record: before, created: false };
  const checked = checkSearch(request, data, parts.maxPoints);
  const pointsPerChunk = parts.pointsPerChunk ?? chunkSize(checked, workers, parts.rates);
  const record = start(checked, parts.store, {
    prices: data.prices,
    imports: parts.behind((checked.plan.columns ?? []).map(({ id }) => id)),
    idempotencyKey,
    schedule,
    pointsPerChunk,
    workers: parts.pointsPerChunk === null ? workersFor(checked, workers) : workers,
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
