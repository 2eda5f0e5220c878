import type { Grid } from './grid.ts';
import { gridPoints } from './gridPoints.ts';
import { type PointList, pointList } from './pointList.ts';
import { wholeNumbers } from './wholeNumbers.ts';

/** Points of a grid that stand for all of them. */
export interface GridSample {
  points: PointList;
  /** True where these are all points of the grid, each once, so that shares are exact. */
  whole: boolean;
}

/**
 * Draws `size` points of a grid, each time every point being equally likely (a system counts by
 * its number of points), with a seed that gives the same points again. A grid that has no more
 * points than that is given whole instead.
 * @throws RangeError for a grid of 2^53 points or more
 */
export function sampleGrid(grid: Grid, size: number, seed: number): GridSample {
  const { count, at } = gridPoints(grid);
  if (count >= 2 ** 53) throw new RangeError('A grid of 2^53 points or more has no exact numbers to draw.');
  const whole = count <= size;
  const draw = wholeNumbers(seed);
  const points = Array.from({ length: whole ? count : size }, (_, number) =>
    at(whole ? number : draw(count)),
  );
  return { points: pointList(points), whole };
}
