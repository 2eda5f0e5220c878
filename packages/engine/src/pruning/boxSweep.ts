import { blockEntropy } from '../blocks/blockEntropy.ts';
import { blockProgram } from '../blocks/blockProgram.ts';
import { limitTests } from '../blocks/limitTests.ts';
import { newBlock, type PointBlock } from '../blocks/pointBlock.ts';
import { pointWalk } from '../blocks/pointWalk.ts';
import { boundsKey } from '../boundsKey.ts';
import type { KeptPoints } from '../keptPoints.ts';
import { type PointNumbering, pointNumbering } from '../pointNumbering.ts';
import type { Prepared } from '../prepare.ts';
import { keyOf } from '../ranking.ts';
import type { Box } from './box.ts';

/** Points computed at once. */
const capacity = 512;

/** Looks at every point of boxes of one system after another. */
export interface BoxSweep {
  /** Turns to a system, which has been entered in `kept`. */
  enter(system: readonly number[], total: number): void;
  /** Offers the points that pass and may be kept; returns how many pass. */
  sweep(box: Box, kept: KeptPoints): number;
  /** The number of a point of the system. */
  numberOf(parts: ArrayLike<number>): number;
}

/** Prepares the sweep of boxes of a plan's grid, by the canonical operations in the canonical order. */
export function boxSweep({ program, limits, limited, scoreOutput, grid, ranking }: Prepared): BoxSweep {
  const outputs = limited.map((_, output) => output);
  const blocks = blockProgram(program, outputs, scoreOutput, grid.components.max, capacity);
  const tests = limitTests(
    limits,
    blocks.limited,
    limited.map(() => false),
    capacity,
  );
  const formEntropy = blockEntropy(capacity);
  const numberings = knownNumberings(grid);
  const scratch: PointBlock[] = [];
  let numbering = numberings([]);
  let parts: number[] = [];
  let whole = 1;

  /** The number of the point at a place of a block. */
  function numberAt({ levels, last }: PointBlock, place: number): number {
    let at = place;
    parts[levels.length] = last[place]!;
    for (let level = levels.length - 1; level >= 0; level -= 1) {
      parts[level] = levels[level]!.parts[at]!;
      at = levels[level]!.parent[at]!;
    }
    return numbering.numberOf(parts);
  }

  function offer(block: PointBlock, passing: number, kept: KeptPoints): void {
    const scores = blocks.scores(tests.passing, passing);
    let worst = kept.worstKey();
    for (let at = 0; at < passing; at += 1) {
      const score = Number.isFinite(scores[at]) ? scores[at]! : Number.NaN;
      if (keyOf(score, ranking.prefer) > worst) continue;
      kept.offer(score, numberAt(block, tests.passing[at]!));
      worst = kept.worstKey();
    }
  }

  return {
    enter(system, total) {
      numbering = numberings(system);
      parts = new Array<number>(system.length).fill(0);
      whole = total;
      blocks.enter(system, total);
    },
    sweep({ low, high, total }, kept) {
      const elements = low.length;
      scratch[elements] ??= newBlock(elements, capacity);
      const block = scratch[elements];
      const points = pointWalk({ lowest: low, highest: high, whole: total });
      let passed = 0;
      for (;;) {
        points.fill(block, capacity);
        if (block.count === 0) return passed;
        formEntropy(block, whole);
        blocks.place(block, 0);
        blocks.compute(block.count);
        const passing = tests.test(block.count);
        passed += passing;
        offer(block, passing, kept);
      }
    },
    numberOf: (of) => numbering.numberOf(Array.from(of)),
  };
}

/** Numberings are kept up to so many, one for all systems with equal bounds. */
const mostKept = 4096;

function knownNumberings(grid: Prepared['grid']): (system: readonly number[]) => PointNumbering {
  const key = boundsKey(grid);
  const known = new Map<string, PointNumbering>();
  return (system) => {
    const bounds = key(system);
    let numbering = known.get(bounds);
    if (!numbering) {
      if (known.size >= mostKept) known.clear();
      numbering = pointNumbering(grid, system);
      known.set(bounds, numbering);
    }
    return numbering;
  };
}
