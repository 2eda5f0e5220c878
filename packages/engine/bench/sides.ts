import { scoreBlocks } from '../src/blocks/scoreBlocks.ts';
import { type Score, scoreChunk, scoreReference } from '../src/index.ts';
import { scoreKernel } from '../src/kernel/scoreKernel.ts';

/** A scorer that is measured. */
export interface Side {
  name: string;
  score: Score;
  /** What it forms at each point. */
  forms: string;
  /** It takes only some points of some systems, being slow. */
  few?: true;
  /** It leaves out regions that cannot matter, and is measured only where the tally lets it. */
  prunes?: true;
}

export const plainForms =
  'every limited quantity at every point, all of it anew; the score of points that pass';

export const sides: readonly Side[] = [
  {
    name: 'reference',
    score: scoreReference,
    forms: 'every limited quantity and the score at every point, by the canonical evaluator',
    few: true,
  },
  {
    name: 'blocks',
    score: scoreBlocks,
    forms: 'every limited quantity at every point; the score of points that pass',
  },
  {
    name: 'kernel',
    score: scoreKernel,
    forms:
      'sums at every point, every limit tested as sums or tables allow without forming the quantity; the score, and what lies too near a limit, by the canonical evaluator',
  },
  {
    name: 'pruned',
    score: scoreChunk,
    forms:
      'bounds of regions; limited quantities and score only at points that bounds leave open; with tally all the kernel instead where that turns out quicker',
    prunes: true,
  },
];
