import type { BestSoFar, Chunk, Outcome, Plan, Schedule } from '@tiegel/contract';
import type { Ranking } from '@tiegel/engine';
import type { ChunkLine } from './chunkLine.ts';
import type { RecentRate } from './recentRate.ts';

/**
 * A search that this process works on. All of it can be made anew from the ledger (resume.ts):
 * nothing here is lost with the process but the work of chunks that were not finished.
 */
export interface Underway {
  readonly id: string;
  /** key in the store */
  readonly number: number;
  readonly plan: Plan;
  readonly ranking: Ranking;
  readonly systems: number;
  /** what all taken outcomes merge to */
  outcome: Outcome;
  /** as the store has it */
  bestSoFar: BestSoFar | null;
  /** bytes and number of outcomes kept in the store that are not merged there yet */
  loose: { bytes: number; count: number };
  /** chunks whose outcome was not taken yet */
  unfinished: number;
  readonly chunks: ChunkLine;
  readonly inFlight: Map<number, Chunk>;
  announced: boolean;
  /** seconds of work before `since`; when the first chunk was handed out (ms, monotonic), null before */
  earlierSeconds: number;
  since: number | null;
  /** of late; begins anew after a rest, in which nothing came back */
  rate: RecentRate;
  /** what workers scored for this process, and the seconds that it took them */
  scored: { points: number; seconds: number };
  /** when it is worked on */
  schedule: Schedule;
  /** why nothing is handed out at the moment, null where it is */
  heldBy: string | null;
  /** aborted when it is paused, cancelled or failed, or the program ends */
  readonly stop: AbortController;
  /** resolves when every outcome was taken */
  readonly complete: PromiseWithResolvers<void>;
}

/** Seconds from handing out the first chunk until now, without pauses. */
export function activeSeconds(search: Underway): number {
  return search.earlierSeconds + (search.since === null ? 0 : (performance.now() - search.since) / 1000);
}

/** Lets chunks that are not with a worker any more wait again. */
export function giveBack(search: Underway, ordinals: Iterable<number>): void {
  for (const ordinal of [...ordinals]) {
    const chunk = search.inFlight.get(ordinal);
    search.inFlight.delete(ordinal);
    if (chunk !== undefined) search.chunks.giveBack(chunk);
  }
}
