import { isPruned } from './isPruned.ts';
import { scoreKernel } from './kernel/scoreKernel.ts';
import { scorePruned } from './pruning/scorePruned.ts';
import type { Score } from './scoring.ts';

/**
 * The scorer of the searches, and what the estimate before them measures. Where each limit is
 * counted or a front is sought, every point is looked at; else what cannot matter is left out.
 */
export const scoreChunk: Score = (prepared, chunk, options) => {
  const score = isPruned(prepared.plan.specification) ? scorePruned : scoreKernel;
  return score(prepared, chunk, options);
};
