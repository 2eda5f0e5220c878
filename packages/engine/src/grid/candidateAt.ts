import { boundsKey } from './boundsKey.ts';
import { type Grid, wholeOf } from './grid.ts';
import { type PointNumbering, pointNumbering } from './pointNumbering.ts';
import { systemNumbering } from './systemNumbering.ts';

/** A grid point as a composition. */
export interface GridPoint {
  /** Alphabetical. */
  symbols: string[];
  /** In the order of `symbols`; they add up to `total`. */
  parts: number[];
  total: number;
  /** at.% of each symbol. */
  composition: Record<string, number>;
}

/** The grid point of a system and point number. Throws RangeError for a number that does not exist. */
export function candidateAt(grid: Grid, system: number, point: number): GridPoint {
  return pointsOf(grid)(system, point);
}

/** Numberings are kept up to about so many numbers in their tables, 8 MB. */
const mostNumbersKept = 2 ** 20;

/** Reads many points of one grid, each as candidateAt does: what is prepared for some bounds serves all systems that have them. */
export function pointsOf(grid: Grid): (system: number, point: number) => GridPoint {
  const systems = systemNumbering(grid);
  const keyOf = boundsKey(grid);
  const kept = new Map<string, PointNumbering>();
  let numbersKept = 0;

  function numberingOf(elements: readonly number[]): PointNumbering {
    const key = keyOf(elements);
    const known = kept.get(key);
    if (known) return known;
    const numbers = (elements.length + 1) * (wholeOf(grid, elements.length) + 1);
    if (numbersKept + numbers > mostNumbersKept) {
      kept.clear();
      numbersKept = 0;
    }
    const numbering = pointNumbering(grid, elements);
    kept.set(key, numbering);
    numbersKept += numbers;
    return numbering;
  }

  return (system, point) => {
    const elements = systems.systemAt(system);
    const parts = numberingOf(elements).partsAt(point);
    const symbols = elements.map((element) => grid.symbols[element]!);
    const total = wholeOf(grid, elements.length);
    const composition: Record<string, number> = {};
    for (const [index, symbol] of symbols.entries()) composition[symbol] = (100 * parts[index]!) / total;
    return { symbols, parts, total, composition };
  };
}
