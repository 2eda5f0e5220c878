import type { Chunk, Outcome } from '@tiegel/contract';
import type { Prepared } from './prepare.ts';

export interface ScoreOptions {
  /** The score that a kept point must reach, known from elsewhere; null where nothing is known. Spares work and never changes what merging yields. */
  cutOff: number | null;
  /** Asked now and then; true ends the scoring. */
  stopped?: () => boolean;
}

/** Scores every grid point of a chunk. Null when it was stopped. */
export type Score = (prepared: Prepared, chunk: Chunk, options: ScoreOptions) => Outcome | null;
