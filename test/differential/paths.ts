import type { Chunk, Outcome, Plan } from '@tiegel/contract';
import { cutOffOf, emptyOutcome, mergeOutcomes, prepare, type Score, scoreChunk } from '@tiegel/engine';
import { scoreBlocks } from '../../packages/engine/src/blocks/scoreBlocks.ts';
import { isPruned } from '../../packages/engine/src/isPruned.ts';
import { scoreKernel } from '../../packages/engine/src/kernel/scoreKernel.ts';
import { scorePruned } from '../../packages/engine/src/pruning/scorePruned.ts';
import { chunksOf } from './chunksOf.ts';
import type { SearchCase } from './searchCase.ts';

/** A way on which the plan of a case, cut into chunks as that says, becomes an outcome. */
export interface Path {
  name: string;
  run(plan: Plan, of: SearchCase): Promise<Outcome> | Outcome;
}

/** One scorer in this thread, the chunks in the order given, each with the cut-off known by then. */
function inThisThread(name: string, score: Score, order: (chunks: Chunk[]) => Chunk[]): Path {
  return {
    name,
    run(plan, of) {
      const prepared = prepare(plan);
      const { grid, ranking, limits } = prepared;
      return order(chunksOf(grid, of)).reduce(
        (merged, chunk) => {
          const outcome = score(prepared, chunk, { cutOff: cutOffOf(merged, ranking) })!;
          return mergeOutcomes(merged, outcome, ranking);
        },
        emptyOutcome(limits.length, plan.specification.tally),
      );
    },
  };
}

/** The same, the chunks all begun before any is merged: none has a cut-off, each learns from a number that all share. */
function withSharedKey(name: string, score: Score): Path {
  return {
    name,
    run(plan, of) {
      const prepared = prepare(plan);
      const { grid, ranking, limits } = prepared;
      const sharedKey = Float64Array.of(Number.POSITIVE_INFINITY);
      return chunksOf(grid, of)
        .toSorted((one, other) => ((one.ordinal * 7) % 5) - ((other.ordinal * 7) % 5))
        .map((chunk) => score(prepared, chunk, { cutOff: null, sharedKey })!)
        .reduce(
          (merged, outcome) => mergeOutcomes(outcome, merged, ranking),
          emptyOutcome(limits.length, plan.specification.tally),
        );
    },
  };
}

const asPlanned = (chunks: Chunk[]) => chunks;

/** Boxes of a search of so few points are halved, too, where regions are left out. */
const inSmallBoxes: Score = (prepared, chunk, options) => {
  if (!isPruned(prepared.plan.specification)) return scoreChunk(prepared, chunk, options);
  return scorePruned(prepared, chunk, options, 16);
};

/** A scorer is stopped after fewer questions than that. */
const mostQuestions = 6;

/** Every chunk is begun and stopped, at one question or another, before it is scored: that leaves nothing behind. */
function onceStopped(score: Score): Score {
  let times = 0;
  return (prepared, chunk, options) => {
    times += 1;
    let left = times % mostQuestions;
    score(prepared, chunk, { ...options, stopped: () => left-- <= 0 });
    return score(prepared, chunk, options);
  };
}

/** Scorers by name, beside the one that searches choose for their tally. */
export const paths: readonly Path[] = [
  inThisThread('the scorer of the searches', scoreChunk, asPlanned),
  inThisThread('the scorer of the searches, chunks backwards', scoreChunk, (chunks) => chunks.toReversed()),
  inThisThread('small regions left out', inSmallBoxes, asPlanned),
  inThisThread('small regions, once stopped', onceStopped(inSmallBoxes), asPlanned),
  withSharedKey('small regions, one shared key', inSmallBoxes),
  inThisThread('blocks', scoreBlocks, asPlanned),
  inThisThread('kernel', scoreKernel, asPlanned),
  inThisThread('kernel, once stopped', onceStopped(scoreKernel), asPlanned),
];
