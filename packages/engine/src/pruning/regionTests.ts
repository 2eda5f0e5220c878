import type { Prepared } from '../prepare.ts';
import type { Box } from './box.ts';
import { systemBounder } from './systemBounder.ts';

/** How the points of a region stand to all limits together: none meets them, perhaps some, every one. */
export type Standing = 'none' | 'some' | 'all';

/** What is known of the points of a box without looking at them. */
export interface RegionTests {
  /** Turns to a system. */
  enter(members: readonly number[], total: number): void;
  /** How its points stand to the limits. */
  standing(box: Box): Standing;
  /** No point of that box has a key below this: see keyOf. Infinity where none has a score. */
  bestKey(): number;
}

/** Tests for a plan's limits and ranking. */
export function regionTests({ program, limits, limited, scoreOutput, ranking, grid }: Prepared): RegionTests {
  const bounder = systemBounder(
    program,
    [...limited.map((_, output) => output), scoreOutput],
    grid.components.max,
  );
  const score = limited.length;
  return {
    enter: bounder.enter,
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
      return ranking.prefer === 'high' ? -bounder.high(score) : bounder.low(score);
    },
  };
}
