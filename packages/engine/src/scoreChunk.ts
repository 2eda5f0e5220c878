import { isPruned } from './isPruned.ts';
import { scoreKernel } from './kernel/scoreKernel.ts';
import { scoreAll } from './pruning/scoreAll.ts';
import { scorePruned } from './pruning/scorePruned.ts';
import type { Score } from './scoring.ts';

/**
 * The scorer of the searches, and what the estimate before them measures. Where each limit is
 * counted or a front is sought, every point is looked at; else what cannot matter is left out,
 * where that is quicker.
 */
export const scoreChunk: Score = (prepared, chunk, options) => {
  const { specification } = prepared.plan;
  if (!isPruned(specification)) return scoreKernel(prepared, chunk, options);
  const score = specification.tally === 'all' ? scoreAll : scorePruned;
  return score(prepared, chunk, options);
};
