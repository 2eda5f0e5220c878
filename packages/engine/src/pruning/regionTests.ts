import type { Program } from '@tiegel/screening';
import type { Prepared } from '../prepare.ts';
import { always, never } from './affine.ts';
import type { Box } from './box.ts';
import { latticeOf } from './lattice.ts';
import type { Sieve } from './sieve.ts';
import { systemBounder } from './systemBounder.ts';

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
  /** All limits, by their places. */
  all: readonly number[];
  /**
   * Writes what points of that box must fulfil: to pass, to pass surely, and to be kept, the worst
   * key being this (−Infinity: none can be kept).
   */
  fill(sieve: Sieve, open: readonly number[], worstKey: number): void;
}

/** Tests for a plan's limits and ranking. */
export function regionTests({ program, limits, limited, scoreOutput, ranking, grid }: Prepared): RegionTests {
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

  /** Whether all points of the box meet a limit. */
  function isMet(place: number): boolean {
    const { output, least, greatest } = limits[place]!;
    return (
      bounder.missing(output) === never && bounder.low(output) >= least && bounder.high(output) <= greatest
    );
  }

  return {
    enter(members, whole) {
      bounder.enter(members, whole);
      enterTotal(whole);
    },
    bound: bounder.bound,
    stillOpen(open) {
      let closed = 0;
      for (const place of open) {
        const { output, least, greatest } = limits[place]!;
        const low = bounder.low(output);
        const high = bounder.high(output);
        const missing = bounder.missing(output);
        if (missing === always || low > greatest || high < least) return null;
        if (missing === never && low >= least && high <= greatest) closed += 1;
      }
      return closed === 0 ? open : open.filter((place) => !isMet(place));
    },
    all: limits.map((_, place) => place),
    bestKey() {
      if (bounder.missing(score) === always) return Number.POSITIVE_INFINITY;
      return isHigh
        ? -Math.min(bounder.high(score), greatestScore)
        : Math.max(bounder.low(score), leastScore);
    },
    fill(sieve, open, worstKey) {
      sieve.clear();
      for (const place of open) {
        const { output, least, greatest } = limits[place]!;
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
