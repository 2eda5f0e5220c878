import type { PriceList } from '@tiegel/elements';
import { planChunks } from '@tiegel/engine';
import type { SearchRecord, Store } from '@tiegel/store';
import { columnsOf } from './candidateColumns.ts';
import type { CheckedSearch } from './check.ts';

/**
 * How long a worker should take for a chunk, s: far above what handing it over costs, and so that
 * progress shows. With many workers longer: one process hands out and collects, in 2 ms of its time
 * for each chunk of worker processes (README of packages/queue), and must not be busy with a
 * hundred a second.
 */
export function secondsPerChunk(workers: number): number {
  return Math.max(1, workers / 100);
}

interface Start {
  prices: PriceList | null;
  idempotencyKey: string | null;
  pointsPerChunk: number;
  workers: number;
  /** when the request came, ms, monotonic */
  since: number;
}

/** Plans a checked search: it and its chunks become rows of the ledger, in one transaction. */
export function start(checked: CheckedSearch, store: Store, given: Start): SearchRecord {
  const { plan, grid, question, notices, systems, points } = checked;
  const { prices, idempotencyKey, pointsPerChunk, workers } = given;
  const chunks = planChunks(grid, {
    pointsPerChunk: Math.max(1, Math.round(pointsPerChunk)),
    workers: Math.max(1, workers),
  });
  const search = {
    ...{ idempotencyKey, plan, question, notices, systems, points },
    columns: columnsOf(plan),
    prices: prices && { date: prices.date, currency: prices.currency, invented: prices.invented },
    preparationSeconds: (performance.now() - given.since) / 1000,
    createdAt: new Date().toISOString(),
  };
  return store.searches.create(search, chunks);
}
