import { setImmediate } from 'node:timers/promises';
import { gridOf, pointsOf } from '@tiegel/engine';
import { screening } from '@tiegel/screening';
import type { NewCandidate, Store } from '@tiegel/store';
import { closingNotices } from './closingNotices.ts';
import { type KeptPoint, keptPoints } from './keptPoints.ts';
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
  const kept = await storeCandidates(search, columns, store, stop);
  makeOrders(search, { kept, columns }, store);
  store.searches.conclude(search.number, {
    ...{ state: 'done', reason: null, kept, activeSeconds: seconds },
    notices: [...notices, ...closingNotices(search, prices?.currency ?? null)],
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
): Promise<number> {
  const candidate = candidateMaker(search, columns);
  let kept = 0;
  let batch: NewCandidate[] = [];
  for (const point of keptPoints(search.outcome, search.ranking)) {
    kept += 1;
    batch.push(candidate(point, kept));
    if (batch.length < batchLength) continue;
    store.candidates.insert(search.number, batch);
    batch = [];
    await breathe(stop);
  }
  store.candidates.insert(search.number, batch);
  return kept;
}

/**
 * Values are worked out for the parts of the grid, as they were when the point was scored: a
 * candidate's ranked quantity is its score, to the last digit.
 */
function candidateMaker({ plan }: Underway, columns: readonly string[]) {
  const pointAt = pointsOf(gridOf(plan.specification));
  const valuesOf = screening(plan.facts, columns, plan.conditions);
  return ({ score, system, point }: KeptPoint, rank: number): NewCandidate => {
    const { symbols, parts } = pointAt(system, point);
    const amounts = Object.fromEntries(symbols.map((symbol, place) => [symbol, parts[place]!]));
    return { rank, symbols, parts, score, quantities: valuesOf(amounts) };
  };
}

/** The orders that people will ask for first. */
function makeOrders(
  { number, plan }: Underway,
  set: { kept: number; columns: readonly string[] },
  store: Store,
): void {
  const { limits, rank } = plan.specification;
  for (const quantity of new Set([...limits, ...rank].map((entry) => entry.quantity))) {
    store.candidates.order({ search: number, ...set }, quantity);
  }
}

async function breathe(stop?: AbortSignal): Promise<void> {
  await setImmediate();
  stop?.throwIfAborted();
}
