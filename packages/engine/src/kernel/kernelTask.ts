import type { Prepared } from '../prepared/prepare.ts';
import type { KernelTask } from './code/task.ts';
import { testsOf } from './comparison/testsOf.ts';
import { lower } from './lower.ts';
import type { Node } from './node.ts';
import { reachesOf } from './reach.ts';
import { type Roughen, roughener } from './roughened.ts';
import { type Slack, sizeOf } from './slack.ts';
import { unrooted } from './unrooted.ts';

/** What the kernels of a search do, and what the driver must know of it. */
export interface SearchTask extends KernelTask {
  /** The limited outputs whose values are counted, in the order of `counted`. */
  countedOutputs: readonly number[];
  scoreSlack: Slack;
}

/**
 * The limits and the ranking of a search as tests and a node of a kernel. Null for a search that
 * no kernel is made for: equimolar grids, data with gaps, numbers far from 1, a Pareto front, and a
 * score of which nothing is known how far it may be off.
 */
export function kernelTask(prepared: Prepared): SearchTask | null {
  const { program, grid, limits, limited, scoreOutput, bounds, ranking } = prepared;
  if (ranking.front || grid.components.max < 2) return null;
  const lowered = lower(program, grid);
  if (lowered === null) return null;
  const { nodes, outputs } = lowered;
  const roughen = roughener(nodes, { total: grid.total!, elements: grid.components.max });
  const tests = testsOf(nodes, roughen, grid.total!, grid.components.max);
  const kept = ranking.keep > 0 || ranking.keepPerSystem > 0;
  const score = kept ? quickest(roughen, outputs[scoreOutput]!) : null;
  if (score && !(score.slack.absolute < Number.MAX_VALUE)) return null;
  const power = score && unrooted(nodes, outputs[scoreOutput]!);
  const raised = power && power.node.slack.absolute < Number.MAX_VALUE ? power : null;
  const countedOutputs = limited
    .map((_, output) => output)
    .filter((output) => bounds[output]!.missing !== 'never');
  return {
    limits: limits.map(({ output, least, greatest }) => tests.within(outputs[output]!, least, greatest)),
    counted: countedOutputs.map((output) => tests.isFinite(outputs[output]!)),
    ...{ countedOutputs, score, prefer: ranking.prefer, tests, total: grid.total! },
    reaches: score ? reachesOf(score, ranking.prefer, grid.total!, grid.components.max) : [],
    scoreSlack: score?.slack ?? { absolute: 0, relative: 0 },
    raised,
  };
}

/** A score so well known that hardly a point more may be kept. */
const GOOD = 1e-5;

/** The score by rough exponentials, where it is known well enough all the same. */
function quickest(roughen: Roughen, score: Node): Node {
  const rough = roughen(score);
  const { absolute, relative } = rough.slack;
  return relative <= GOOD && absolute <= GOOD * sizeOf(rough) ? rough : score;
}
