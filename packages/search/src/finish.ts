import { setImmediate } from 'node:timers/promises';
import type { NewCandidate, Store } from '@tiegel/store';
import { storedNames } from './candidateColumns.ts';
import { candidateMaker } from './candidateMaker.ts';
import { closingNotices } from './closingNotices.ts';
import { keptPoints } from './keptPoints.ts';
import { activeSeconds, type Underway } from './underway.ts';

/** Candidates worked out and stored at a time: requests are answered between two batches. */
const batchLength = 500;

/**
 * Turns what a scored search keeps into candidates with every quantity, makes them ready to be
 * paged, and concludes the search. A crash on the way does no harm: the search is still unfinished
 * then, and finishing starts again from nothing. Throws the reason of `stop` when it is aborted.
 */
export async function finish(search: Underway, store: Store, stop: AbortSignal): Promise<void> {
  const since = performance.now();
  // Now, not when the candidates are stored: storing has a time of its own.
  const seconds = activeSeconds(search);
  await clearCandidates(search.number, store, stop);
  const { columns, prices, notices } = store.searches.find(search.id)!;
  const { kept, seen } = await storeCandidates(search, columns, store, stop);
  makeOrders(search, { kept, columns }, store);
  store.searches.conclude(search.number, {
    ...{ state: 'done', reason: null, kept, activeSeconds: seconds },
    notices: [...notices, ...closingNotices(search, { kept, seen }, prices?.currency ?? null)],
    storingSeconds: (performance.now() - since) / 1000,
    finishedAt: new Date().toISOString(),
  });
}

/** Takes away what an earlier attempt at finishing left. */
export async function clearCandidates(search: number, store: Store, stop?: AbortSignal): Promise<void> {
  while (store.candidates.clear(search, batchLength * 10) > 0) await breathe(stop);
}

async function storeCandidates(
  search: Underway,
  columns: readonly string[],
  store: Store,
  stop: AbortSignal,
): Promise<{ kept: number; seen: number }> {
  const candidate = candidateMaker(search.plan, columns);
  let kept = 0;
  let seen = 0;
  let batch: NewCandidate[] = [];
  for (const point of keptPoints(search.outcome, search.ranking)) {
    seen += 1;
    const one = candidate(point, kept + 1);
    if (one !== null) {
      kept += 1;
      batch.push(one);
    }
    if (seen % batchLength > 0) continue;
    store.candidates.insert(search.number, batch);
    batch = [];
    await breathe(stop);
  }
  store.candidates.insert(search.number, batch);
  return { kept, seen };
}

/** The orders that people will ask for first. */
function makeOrders(
  { number, plan }: Underway,
  set: { kept: number; columns: readonly string[] },
  store: Store,
): void {
  const { limits, rank } = plan.specification;
  const names = storedNames(set.columns);
  const stored = { search: number, kept: set.kept, columns: names.all };
  for (const quantity of new Set([...limits, ...rank].map((entry) => entry.quantity))) {
    store.candidates.order(stored, names.of(quantity));
  }
}

async function breathe(stop?: AbortSignal): Promise<void> {
  await setImmediate();
  stop?.throwIfAborted();
}
