import { encodeOutcome, type Outcome } from '@tiegel/contract';
import { addOutcome, mergeCounts } from '@tiegel/engine';
import type { Store } from '@tiegel/store';
import { bestSoFar } from './bestSoFar.ts';
import { activeSeconds, type Underway } from './underway.ts';

/** Outcomes are kept one by one until they are this many, or larger than this and than so many times what they merge to. */
const looseBytes = 4 * 1024 * 1024;
const looseTimes = 4;
const looseCount = 500;

/**
 * Takes the outcome of a chunk: into the ledger first, in one transaction with the chunk's
 * completion, and then into what the search has found. False for a chunk that was taken before.
 */
export function collect(search: Underway, ordinal: number, outcome: Outcome, store: Store): boolean {
  const bytes = encodeOutcome(outcome);
  const progress = {
    counts: { systems: search.systems, ...mergeCounts(search.outcome, outcome) },
    activeSeconds: activeSeconds(search),
  };
  search.inFlight.delete(ordinal);
  search.chunks.drop(ordinal);
  if (!store.ledger.take(search.number, ordinal, bytes, progress)) return false;
  search.outcome = addOutcome(search.outcome, outcome, search.ranking);
  search.unfinished -= 1;
  search.rate.add(outcome.points, performance.now());
  keepFew(search, bytes.byteLength, store);
  noteBest(search, store);
  return true;
}

/** Writes down a better best: some dozens of times in a search, however many chunks it has. */
function noteBest(search: Underway, store: Store): void {
  const best = bestSoFar(search.outcome, search.plan.specification, search.bestSoFar);
  if (best === search.bestSoFar) return;
  search.bestSoFar = best;
  store.searches.change(search.number, { bestSoFar: best });
}

/**
 * Merges the outcomes kept in the store when they have grown: resuming then has little to read,
 * and a search that keeps a million points writes its 24 MB, thrice at once in memory, hardly ever.
 */
function keepFew(search: Underway, bytes: number, store: Store): void {
  const { loose, outcome } = search;
  loose.bytes += bytes;
  loose.count += 1;
  const mergedBytes = outcome.best.byteLength + outcome.bestOfSystems.byteLength;
  if (loose.count < looseCount && loose.bytes < Math.max(looseBytes, looseTimes * mergedBytes)) return;
  store.ledger.merge(search.number, encodeOutcome(outcome));
  search.loose = { bytes: 0, count: 0 };
}
