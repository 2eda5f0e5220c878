import type { Program } from '@tiegel/screening';
import type { SearchTask } from '../../kernel/kernelTask.ts';
import type { Prepared } from '../../prepared/prepare.ts';
import { always, never } from '../bounds/affine.ts';
import { systemBounder } from '../bounds/systemBounder.ts';
import type { Box } from '../boxes/box.ts';
import type { Sieve } from '../cutting/sieve.ts';
import { latticeOf } from './lattice.ts';
import { all, limitRegions, none, open as undecided, type Verdict } from './limitRegions.ts';
import { ratioBound } from './ratioBound.ts';

/** What is known of the points of a box without looking at them. */
export interface RegionTests {
  /** Turns to a system. */
  enter(members: readonly number[], total: number): void;
  /** Turns to a box. */
  bound(box: Box): void;
  /** No point of that box that passes has a key below this: see keyOf. Infinity where none has a score. */
  bestKey(): number;
  /**
   * The limits, of those that are open, that some points of that box may meet and some not: all points
   * meet the others. Null when no point meets all limits. A limit that is not open any more in a box
   * is open in no part of it.
   */
  stillOpen(open: readonly number[]): readonly number[] | null;
  /** All limits, by their places, the cheap ones first. */
  all: readonly number[];
  /**
   * Writes what points of that box must fulfil: to pass, to pass surely, and to be kept, the worst
   * key being this (−Infinity: none can be kept).
   */
  fill(
    sieve: Pick<Sieve, 'clear' | 'doubt' | 'keepNothing' | 'add'>,
    open: readonly number[],
    worstKey: number,
  ): void;
}

/**
 * Tests for a plan's limits and ranking.
 *
 * @param task what the kernels of the search do; null where none is made
 */
export function regionTests(
  { program, limits, limited, scoreOutput, ranking, grid }: Prepared,
  task: SearchTask | null,
): RegionTests {
  const outputs = [...limited.map((_, output) => output), scoreOutput];
  const bounder = systemBounder(program, outputs, grid.components.max, scoreOutput);
  const score = limited.length;
  const isHigh = ranking.prefer === 'high';
  const scoreLimits = limitsOnScore(program, limits, scoreOutput);
  const lattice = latticeOf(program.steps[program.outputs[scoreOutput]!]!);
  let leastScore = -Infinity;
  let greatestScore = Infinity;
  let total = 0;

  /** Where the score itself is limited, it ends at the last value within the limit that a point may have. */
  function enterTotal(whole: number): void {
    if (whole === total) return;
    total = whole;
    leastScore = -Infinity;
    greatestScore = Infinity;
    for (const { least, greatest } of scoreLimits) {
      leastScore = Math.max(leastScore, lattice?.atLeast(least, whole) ?? least);
      greatestScore = Math.min(greatestScore, lattice?.atMost(greatest, whole) ?? greatest);
    }
  }

  const fused = task && limitRegions(task.limits, task.total, grid.components.max);
  const isWhole = (place: number) => fused?.limits[place]?.isWhole ?? false;
  const ratio = task && ratioBound(task, grid.components.max);
  let box: Box = { low: [], high: [], total: 1 };

  /** What is known of a limit over the box: by polynomials, where it comes down to them, else step by step. */
  function verdictOf(place: number): Verdict {
    const known = fused ? fused.limits[place]!.verdict(box) : undecided;
    if (known !== undecided || isWhole(place)) return known;
    const { output, least, greatest } = limits[place]!;
    const low = bounder.low(output);
    const high = bounder.high(output);
    const missing = bounder.missing(output);
    if (missing === always || low > greatest || high < least) return none;
    return missing === never && low >= least && high <= greatest ? all : undecided;
  }

  const costOf = (place: number) => (isWhole(place) ? fused!.limits[place]!.degree : 3);

  return {
    enter(members, whole) {
      bounder.enter(members, whole);
      fused?.enter(members);
      ratio?.enter(members);
      enterTotal(whole);
    },
    bound(next) {
      box = next;
      bounder.bound(next);
    },
    stillOpen(open) {
      let left: number[] | null = null;
      for (let at = 0; at < open.length; at += 1) {
        const verdict = verdictOf(open[at]!);
        if (verdict === none) return null;
        if (verdict === all) left ??= open.slice(0, at);
        else left?.push(open[at]!);
      }
      return left ?? open;
    },
    all: limits.map((_, place) => place).sort((one, other) => costOf(one) - costOf(other)),
    bestKey() {
      if (ratio) {
        const key = ratio.bestKey(box);
        return Math.max(key, isHigh ? -greatestScore : leastScore);
      }
      if (bounder.missing(score) === always) return Number.POSITIVE_INFINITY;
      return isHigh
        ? -Math.min(bounder.high(score), greatestScore)
        : Math.max(bounder.low(score), leastScore);
    },
    fill(sieve, open, worstKey) {
      sieve.clear();
      if (worstKey === -Infinity) sieve.keepNothing();
      else if (worstKey < Infinity)
        sieve.add('keep', bounder, score, isHigh ? -1 : 1, isHigh ? -worstKey : worstKey);
      for (const place of open) {
        const { output, least, greatest } = limits[place]!;
        if (bounder.missing(output) !== 0) sieve.doubt();
        if (bounder.high(output) > greatest) {
          sieve.add('pass', bounder, output, 1, greatest);
          sieve.add('passSurely', bounder, output, 1, greatest);
        }
        if (bounder.low(output) < least) {
          sieve.add('pass', bounder, output, -1, least);
          sieve.add('passSurely', bounder, output, -1, least);
        }
      }
    },
  };
}

/** The limits on the quantity that is ranked, if the score is the quantity itself. */
function limitsOnScore(
  { outputs }: Program,
  limits: Prepared['limits'],
  scoreOutput: number,
): Prepared['limits'] {
  return limits.filter(({ output }) => outputs[output] === outputs[scoreOutput]);
}
