import type { Chunk, Outcome } from '@tiegel/contract';

/** A search whose chunks will come: a thread may make itself ready for them. What that throws the first chunk will throw again. */
export interface AnnouncedSearch {
  searchId: string;
  plan: Uint8Array<SharedArrayBuffer>;
}

/**
 * What a scoring thread is handed. The thread file's default export is
 * `(request: ScoringRequest) => ScoringAnswer | Promise<ScoringAnswer>`, and its export `ready`
 * `(search: AnnouncedSearch) => void`, called ahead of the first chunk where there is time for it.
 *
 * - `plan`: the search's plan as JSON in UTF-8, in memory shared by all threads of the process;
 *   the same `searchId` always comes with the same plan, so that a thread reads it once and keeps
 *   what it made of it.
 * - `cutOff`: the score that a kept point must reach, null while none is known.
 * - `stop`: shared; as soon as `stop[0]` is not 0 the thread may leave the chunk and answer
 *   `stopped`. To be read every 10⁵ points or so: a thread that is stopped this way stays warm,
 *   one that is terminated has to be started and compiled anew.
 * - `sharedKey`: shared by the threads of this process that score the search; one number, Infinity at
 *   first, by which the scorer tells how good a point must be (ScoreOptions of packages/engine).
 */
export interface ScoringRequest extends AnnouncedSearch {
  chunk: Chunk;
  cutOff: number | null;
  stop: Int32Array<SharedArrayBuffer>;
  sharedKey?: Float64Array<SharedArrayBuffer>;
}

/** What became of the chunk; `scoringSeconds` is time spent in the thread. What the thread throws counts as failed. */
export type ScoringAnswer = { kind: 'done'; outcome: Outcome; scoringSeconds: number } | { kind: 'stopped' };
