import type { Schedule, Size } from '@tiegel/contract';
import { problem, usualSchedule } from '@tiegel/contract/terms';
import { isPruned } from '@tiegel/engine';
import type { ChunkQueue } from '@tiegel/queue';
import type { SearchRecord, Store } from '@tiegel/store';
import type { LabData } from '../labData.ts';
import { askedOtherwise } from './askedOtherwise.ts';
import { type CheckedSearch, checkForm, checkSearch } from './check.ts';
import type { Estimates } from './estimate.ts';
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

/** What comes with a request beside the specification; a schedule that is not given is the usual one. */
interface Sending {
  idempotencyKey: string | null;
  schedule: Schedule | undefined;
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
  { idempotencyKey, schedule }: Sending,
  parts: RequestParts,
): Promise<{ record: SearchRecord; created: boolean }> {
  const since = performance.now();
  const workers = await parts.queue.workers();
  // From here on nothing waits: two requests with one key cannot both find nothing.
  const data = parts.data();
  const before = madeBefore(request, { idempotencyKey, schedule }, data, parts.store);
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

/** The search that a key made before, if it did; a key that comes with another question, hours or priority is refused. */
function madeBefore(
  request: unknown,
  { idempotencyKey, schedule = usualSchedule }: Sending,
  data: LabData,
  store: Store,
): SearchRecord | null {
  const { specification } = checkForm(request, data);
  const record = idempotencyKey === null ? null : store.searches.findByIdempotencyKey(idempotencyKey);
  if (record === null) return null;
  const differing = askedOtherwise(record, { specification, schedule });
  if (differing.length > 0)
    throw problem('search/key-reused', { id: record.id, differing: differing.join(', ') });
  return record;
}
