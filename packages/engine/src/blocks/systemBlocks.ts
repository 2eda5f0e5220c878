import { boundsKey } from '../grid/boundsKey.ts';
import { type Grid, wholeOf } from '../grid/grid.ts';
import { pointNumbering } from '../grid/pointNumbering.ts';
import { blockEntropy } from './blockEntropy.ts';
import { copyOfBlock, newBlock, type PointBlock } from './pointBlock.ts';
import { holdsPoints, pointWalk, type SystemBounds } from './pointWalk.ts';

/** Blocks of systems up to this size are kept, since systems with equal bounds have equal points. */
const mostPointsOfKept = 2 ** 16;
/** All kept blocks together hold about so many points at most, of 28 bytes each. */
const mostPointsKept = 2 ** 18;
const mostBoundsKnown = 10_000;

/** Gets a block, which may be overwritten afterwards; false ends the visit. */
type TakeBlock = (block: PointBlock) => boolean;

/** The points of systems as blocks. */
export interface SystemBlocks {
  /**
   * Hands over the points of a system from `first` up to and not including `end` (null: to the
   * last), block by block, in order. False when the visit was ended.
   */
  visit(system: readonly number[], first: number, end: number | null, take: TakeBlock): boolean;
}

/** A source of blocks of up to `capacity` points for the systems of a grid. */
export function systemBlocks(grid: Grid, capacity: number): SystemBlocks {
  const formEntropy = blockEntropy(capacity);
  const scratch: PointBlock[] = [];
  const keyOf = boundsKey(grid);
  /** What is known of systems with the same bounds: kept blocks, or how to go on. */
  const known = new Map<string, readonly PointBlock[] | 'seen once' | 'too large'>();
  let pointsKept = 0;

  /** Walks from a point on, at most so many points. */
  function walk(
    bounds: SystemBounds,
    from: readonly number[] | null,
    most: number,
    take: TakeBlock,
  ): boolean {
    const elements = bounds.lowest.length;
    scratch[elements] ??= newBlock(elements, capacity);
    const block = scratch[elements];
    const points = pointWalk(bounds, from);
    for (let left = most; left > 0; left -= block.count) {
      points.fill(block, Math.min(capacity, left));
      if (block.count === 0) break;
      formEntropy(block, bounds.whole);
      if (!take(block)) return false;
    }
    return true;
  }

  function remember(key: string, what: readonly PointBlock[] | 'seen once' | 'too large', points = 0): void {
    if (known.size >= mostBoundsKnown || pointsKept + points > mostPointsKept) {
      known.clear();
      pointsKept = 0;
    }
    known.set(key, what);
    pointsKept += points;
  }

  /** Copies of all blocks of a system, to be kept. */
  function keep(key: string, bounds: SystemBounds, points: number): readonly PointBlock[] {
    const blocks: PointBlock[] = [];
    walk(bounds, null, points, (block) => blocks.push(copyOfBlock(block)) > 0);
    remember(key, blocks, points);
    return blocks;
  }

  return {
    visit(system, first, end, take) {
      if (first > 0 || end !== null) {
        const from = pointNumbering(grid, system).partsAt(first);
        return walk(boundsOf(grid, system), from, (end ?? Number.POSITIVE_INFINITY) - first, take);
      }
      const key = keyOf(system);
      const state = known.get(key);
      if (Array.isArray(state)) return state.every(take);
      const bounds = boundsOf(grid, system);
      if (state === undefined) remember(key, holdsPoints(bounds) ? 'seen once' : []);
      if (!holdsPoints(bounds)) return true;
      if (state === 'seen once') {
        const { count } = pointNumbering(grid, system);
        if (count <= mostPointsOfKept) return keep(key, bounds, count).every(take);
        remember(key, 'too large');
      }
      return walk(bounds, null, Number.POSITIVE_INFINITY, take);
    },
  };
}

function boundsOf(grid: Grid, system: readonly number[]): SystemBounds {
  return {
    lowest: system.map((element) => grid.lowest[element]!),
    highest: system.map((element) => grid.highest[element]!),
    whole: wholeOf(grid, system.length),
  };
}
