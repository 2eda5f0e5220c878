import { boundsKey } from '../grid/boundsKey.ts';
import type { Grid } from '../grid/grid.ts';
import { type PointNumbering, pointNumbering } from '../grid/pointNumbering.ts';

/** Numberings are kept up to so many, one for all systems with equal bounds. */
const mostKept = 4096;

/** The numbering of a system's points, made once for systems that have the same. */
export function knownNumberings(grid: Grid): (system: readonly number[]) => PointNumbering {
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
