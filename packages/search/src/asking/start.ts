import type { Schedule, SearchSpecification } from '@tiegel/contract';
import type { PriceList } from '@tiegel/elements';
import { planChunks } from '@tiegel/engine';
import type { SearchRecord, Store } from '@tiegel/store';
import { columnsOf } from '../candidates/candidateColumns.ts';
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

/** Chunks for each worker of a search that leaves regions out: enough to share it out evenly, and for progress to show. */
const prunedChunksPerWorker = 16;
/** Bounds, whatever the number of workers: a chunk of fewer points costs more to hand out than to score, one of more shows no progress. */
const prunedChunk = { least: 300_000, most: 5e9 };

/**
 * How many points a chunk of a search should have that leaves regions out. What it takes hangs on
 * how much of it can be left out, which nobody knows before: so chunks are shares of the whole, and
 * large ones, since a chunk finds its best points anew until it learns from the others how good
 * they must be.
 */
export function pointsOfPrunedChunk(points: number, workers: number): number {
  const share = points / (prunedChunksPerWorker * Math.max(1, workers));
  return Math.min(prunedChunk.most, Math.max(prunedChunk.least, share));
}

/** So many points take a worker a tenth of a second, with slow formulas some seconds: about as long as measuring the rate, or as a second worker needs to begin. */
const fewPoints = 2 ** 25;

/**
 * How many points a chunk of a search should have that is not worth a measurement; null where it is: a larger
 * one, and those of which a point may take a microsecond, fronts and equimolar grids. What one worker scores
 * so soon is one chunk, however many there are.
 */
export function pointsOfShortChunk(
  points: number,
  workers: number,
  { front, fractions }: SearchSpecification,
): number | null {
  if (front !== undefined || fractions === 'equimolar') return null;
  if (points <= fewPoints) return points;
  const share = points / Math.max(1, workers);
  return share <= fewPoints ? share : null;
}

/** Of a chunk that keeps more than so many points its outcome takes megabytes, several times over on its way. */
const keptLightly = 2 ** 18;
/** Chunks of a search that keeps many points: each is merged with all that are kept. */
const keepingChunks = 100;

/** How many points a chunk has at most where up to `keep` of them are kept. */
export function pointsOfKeepingChunk(points: number, keep: number): number {
  return keep <= keptLightly ? Number.POSITIVE_INFINITY : Math.max(keptLightly, points / keepingChunks);
}

/** Whether a search is one chunk, and one worker's. */
export function isOneChunk(points: number, workers: number, specification: SearchSpecification): boolean {
  const short = pointsOfShortChunk(points, workers, specification);
  return short === points && pointsOfKeepingChunk(points, specification.keep) >= points;
}

interface Start {
  prices: PriceList | null;
  /** numbers of the imports in its data */
  imports: readonly number[];
  idempotencyKey: string | null;
  schedule: Schedule | undefined;
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
    ...(given.schedule === undefined ? {} : { schedule: given.schedule }),
    columns: columnsOf(plan),
    prices: prices && { date: prices.date, currency: prices.currency, invented: prices.invented },
    imports: given.imports,
    preparationSeconds: (performance.now() - given.since) / 1000,
    createdAt: new Date().toISOString(),
  };
  return store.searches.create(search, chunks);
}
