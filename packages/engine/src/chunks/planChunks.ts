import type { Chunk } from '@tiegel/contract';
import { completionsBefore, lastCompletions } from '../grid/completions.ts';
import { countPoints } from '../grid/countPoints.ts';
import type { Grid } from '../grid/grid.ts';
import { systemNumbering } from '../grid/systemNumbering.ts';
import { windowSums } from '../grid/windowSums.ts';
import { type ChunkCutter, chunkCutter, type PlanOptions } from './chunkCutter.ts';

/**
 * Cuts a search into chunks that hold every grid point exactly once, in the order of (system,
 * point). Whole systems where possible; a system of more points than a chunk should hold is cut
 * at beginnings of lines (a line: all amounts but the last two fixed), unless the grid says that
 * systems stay whole. Chunks shrink towards the end; beyond about 200,000 of them they grow. A
 * grid without points has no chunks. Throws RangeError for 2^53 points or more.
 */
export function planChunks(grid: Grid, options: PlanOptions): Chunk[] {
  const points = countPoints(grid);
  if (points >= 2n ** 53n) throw new RangeError(`${points} points are too many to plan.`);
  const cutter = chunkCutter(grid, Number(points), options);
  if (grid.total === null) {
    for (let systems = Number(points); systems > 0; ) systems -= cutter.takeSinglePoints(systems);
  } else {
    cutBetween(grid, grid.total, cutter);
  }
  return cutter.chunks();
}

/**
 * Goes down the tree of symbol lists, in the order of systems, only where a chunk ends; what lies
 * under a list is counted, not enumerated.
 */
function cutBetween(grid: Grid, total: number, cutter: ChunkCutter): void {
  const numbering = systemNumbering(grid);
  const layers = [lastCompletions(grid, total)];
  for (let place = grid.symbols.length - 1; place >= 0; place -= 1) {
    layers.unshift(completionsBefore(grid, place, layers[0]!));
  }

  /** `amounts[parts]`: in how many ways the elements of the list have so many parts together. */
  function visit(list: readonly number[], amounts: Float64Array, place: number): void {
    const chosen = list.length;
    const systems = numbering.continuations(place, chosen);
    const ahead = layers[place]![chosen]!;
    let points = 0;
    for (let parts = 0; parts <= total; parts += 1) points += amounts[parts]! * ahead[total - parts]!;
    if (cutter.fits(points)) {
      cutter.take(systems, points);
      return;
    }

    if (numbering.isSystem(place, chosen)) cutter.takeSystem(list, amounts[total]!);
    for (let element = place; element < grid.symbols.length; element += 1) {
      if (numbering.continuations(element + 1, chosen + 1) > 0) {
        const longer = windowSums(amounts, grid.lowest[element]!, grid.highest[element]!);
        visit([...list, element], longer, element + 1);
      }
      if (grid.required[element]) break;
    }
  }

  const nothing = new Float64Array(total + 1);
  nothing[0] = 1;
  visit([], nothing, 0);
}
