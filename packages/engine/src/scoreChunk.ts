import { scoreBlocks } from './scoreBlocks.ts';
import type { Score } from './scoring.ts';

/** The scorer of the searches, and what the estimate before them measures. */
export const scoreChunk: Score = scoreBlocks;
