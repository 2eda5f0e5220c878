import { setImmediate } from 'node:timers/promises';
import type { Store } from '@tiegel/store';
import { storedNames } from '../candidates/candidateColumns.ts';
import { candidateMaker } from './candidateMaker.ts';
import { closingNotices } from './closingNotices.ts';
import { type KeptPoint, keptPoints } from './keptPoints.ts';
import { activeSeconds, type Underway } from './underway.ts';

/** Candidates worked out and stored at a time: requests are answered between two batches. */
const batchLength = 2048;
/** Of more candidates, the orders that people ask for first are made before they ask. */
const manyCandidates = 20_000;

/** What finishing heeds: whether it shall stop, and when it may write. */
interface Going {
  stop: AbortSignal;
  /** Resolves when no other process writes. */
  writable(): Promise<void>;
}

/**
 * Turns what a scored search keeps into candidates with every quantity, makes them ready to be
 * paged, and concludes the search. A crash on the way does no harm: the search is still unfinished
 * then, and finishing starts again from nothing. Throws the reason of `stop` when it is aborted.
 */
export async function finish(search: Underway, store: Store, going: Going): Promise<void> {
  const since = performance.now();
  // Now, not when the candidates are stored: storing has a time of its own.
  const seconds = activeSeconds(search);
  await clearCandidates(search.number, store, going);
  const { columns, prices, notices } = store.searches.find(search.id)!;
  const { kept, seen } = await storeCandidates(search, columns, store, going);
  if (kept > manyCandidates) await makeOrders(search, { kept, columns }, store, going);
  store.searches.conclude(search.number, {
    ...{ state: 'done', reason: null, kept, activeSeconds: seconds },
    notices: [...notices, ...closingNotices(search, { kept, seen }, prices?.currency ?? null)],
    storingSeconds: (performance.now() - since) / 1000,
    finishedAt: new Date().toISOString(),
  });
}

/** Takes away what an earlier attempt at finishing left. */
export async function clearCandidates(search: number, store: Store, going: Going): Promise<void> {
  do await breathe(going);
  while (store.candidates.clear(search, batchLength * 10) > 0);
}

async function storeCandidates(
  search: Underway,
  columns: readonly string[],
  store: Store,
  going: Going,
): Promise<{ kept: number; seen: number }> {
  const made = candidateMaker(search.plan, columns);
  let kept = 0;
  let seen = 0;
  async function add(points: readonly KeptPoint[]): Promise<void> {
    const batch = made(points, kept + 1);
    store.candidates.insert(search.number, batch);
    kept += batch.scores.length;
    seen += points.length;
    await breathe(going);
  }
  let points: KeptPoint[] = [];
  for (const point of keptPoints(search.outcome, search.ranking)) {
    points.push(point);
    if (points.length < batchLength) continue;
    await add(points);
    points = [];
  }
  if (points.length > 0) await add(points);
  return { kept, seen };
}

/** The orders that people will ask for first. */
async function makeOrders(
  { number, plan }: Underway,
  set: { kept: number; columns: readonly string[] },
  store: Store,
  going: Going,
): Promise<void> {
  const { limits, rank, front = [] } = plan.specification;
  const names = storedNames(set.columns);
  const stored = { search: number, kept: set.kept, columns: names.all };
  for (const quantity of new Set([...limits, ...rank, ...front].map((entry) => entry.quantity))) {
    for (const direction of ['asc', 'desc'] as const) {
      const query = { ranges: [], has: [], without: [], order: names.of(quantity), direction, limit: 1 };
      for (const _ of store.candidates.prepare(stored, query)) await breathe(going);
    }
    store.candidates.letGo(number);
  }
}

async function breathe({ stop, writable }: Going): Promise<void> {
  await setImmediate();
  await writable();
  stop.throwIfAborted();
}
