import { type Grid, wholeOf } from './grid.ts';
import { pointNumbering } from './pointNumbering.ts';
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
  const elements = systemNumbering(grid).systemAt(system);
  const parts = pointNumbering(grid, elements).partsAt(point);
  const total = wholeOf(grid, elements.length);
  const symbols = elements.map((element) => grid.symbols[element]!);
  const composition = Object.fromEntries(
    symbols.map((symbol, index) => [symbol, (100 * parts[index]!) / total]),
  );
  return { symbols, parts, total, composition };
}
