import type { Chunk, Outcome } from '@tiegel/contract';
import type { Prepared } from './prepared/prepare.ts';

export interface ScoreOptions {
  /** The score that a kept point must reach, known from elsewhere; null where nothing is known. Spares work and never changes what merging yields. */
  cutOff: number | null;
  /**
   * One number that the chunks of a search on this machine share: the least key (see keyOf) that
   * `keep` points of some chunk were found to reach, Infinity at first. Read and lowered while
   * scoring. Spares work, as the cut-off does, and never changes what merging yields.
   */
  sharedKey?: Float64Array;
  /** Told now and then which share of the chunk is decided; only by scorers that leave regions out. */
  progress?: (share: number) => void;
  /** Asked now and then; true ends the scoring. */
  stopped?: () => boolean;
}

/** Scores every grid point of a chunk. Null when it was stopped. */
export type Score = (prepared: Prepared, chunk: Chunk, options: ScoreOptions) => Outcome | null;
