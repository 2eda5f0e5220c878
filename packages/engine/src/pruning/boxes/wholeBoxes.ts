import { boundsKey } from '../../grid/boundsKey.ts';
import { type Grid, wholeOf } from '../../grid/grid.ts';
import { type Box, pointsIn, tightBox } from './box.ts';

/** Boxes are kept up to so many, one for all systems with equal bounds. */
const mostKept = 4096;

/** All points of a system. */
export interface WholeBox {
  /** Null where the bounds leave no point. */
  box: Box | null;
  points: number;
}

/** The box of a whole system and how many points it has: the same object for systems with the same points, as long as it is kept. */
export function wholeBoxes(grid: Grid): (system: readonly number[]) => WholeBox {
  const { lowest, highest } = grid;
  const key = boundsKey(grid);
  const known = new Map<string, WholeBox>();
  return (system) => {
    const bounds = key(system);
    let whole = known.get(bounds);
    if (!whole) {
      if (known.size >= mostKept) known.clear();
      const box = tightBox(
        system.map((element) => lowest[element]!),
        system.map((element) => highest[element]!),
        wholeOf(grid, system.length),
      );
      whole = { box, points: box === null ? 0 : pointsIn(box) };
      known.set(bounds, whole);
    }
    return whole;
  };
}
