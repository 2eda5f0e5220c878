import type { Program } from '@tiegel/screening';
import type { Prepared } from '../prepare.ts';
import type { Box } from './box.ts';
import { latticeOf } from './lattice.ts';
import type { Sieve } from './sieve.ts';
import { systemBounder } from './systemBounder.ts';

/** How the points of a region stand to all limits together: none meets them, perhaps some, every one. */
export type Standing = 'none' | 'some' | 'all';

/** What is known of the points of a box without looking at them. */
export interface RegionTests {
  /** Turns to a system. */
  enter(members: readonly number[], total: number): void;
  /** How its points stand to the limits. */
  standing(box: Box): Standing;
  /** No point of that box that passes has a key below this: see keyOf. Infinity where none has a score. */
  bestKey(): number;
  /**
   * Writes what points of that box must fulfil: to pass, to pass surely, and to be kept, the worst
   * key being this (−Infinity: none can be kept).
   */
  fill(sieve: Sieve, worstKey: number): void;
}

/** Tests for a plan's limits and ranking. */
export function regionTests({ program, limits, limited, scoreOutput, ranking, grid }: Prepared): RegionTests {
  const outputs = [...limited.map((_, output) => output), scoreOutput];
  const bounder = systemBounder(program, outputs, grid.components.max);
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

  return {
    enter(members, whole) {
      bounder.enter(members, whole);
      enterTotal(whole);
    },
    standing(box) {
      bounder.bound(box);
      let standing: Standing = 'all';
      for (const { output, least, greatest } of limits) {
        const [low, high] = [bounder.low(output), bounder.high(output)];
        if (bounder.missing(output) === 2 || low > greatest || high < least) return 'none';
        if (bounder.missing(output) !== 0 || low < least || high > greatest) standing = 'some';
      }
      return standing;
    },
    bestKey() {
      if (bounder.missing(score) === 2) return Number.POSITIVE_INFINITY;
      return isHigh
        ? -Math.min(bounder.high(score), greatestScore)
        : Math.max(bounder.low(score), leastScore);
    },
    fill(sieve, worstKey) {
      sieve.clear();
      for (const { output, least, greatest } of limits) {
        if (bounder.missing(output) !== 0) sieve.doubt();
        if (bounder.high(output) > greatest) {
          sieve.add('pass', bounder, output, true, -greatest, 1);
          sieve.add('passSurely', bounder, output, false, -greatest, 1);
        }
        if (bounder.low(output) < least) {
          sieve.add('pass', bounder, output, false, least, -1);
          sieve.add('passSurely', bounder, output, true, least, -1);
        }
      }
      if (worstKey === -Infinity) sieve.keepNothing();
      else if (worstKey < Infinity) sieve.add('keep', bounder, score, !isHigh, -worstKey, isHigh ? -1 : 1);
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
