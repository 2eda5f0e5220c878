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

/** Systems whose numbering is kept, those read last. */
const keptSystems = 2000;

interface KeptSystem {
  symbols: string[];
  numbering: PointNumbering;
}

/** Reads many points of one grid, each as candidateAt does: what is prepared for a system serves its other points. */
export function pointsOf(grid: Grid): (system: number, point: number) => GridPoint {
  const systems = systemNumbering(grid);
  const kept = new Map<number, KeptSystem>();

  function systemOf(number: number): KeptSystem {
    const elements = systems.systemAt(number);
    const symbols = elements.map((element) => grid.symbols[element]!);
    const one = { symbols, numbering: pointNumbering(grid, elements) };
    if (kept.size === keptSystems) kept.delete(kept.keys().next().value!);
    kept.set(number, one);
    return one;
  }

  return (system, point) => {
    const { symbols, numbering } = kept.get(system) ?? systemOf(system);
    const parts = numbering.partsAt(point);
    const total = wholeOf(grid, symbols.length);
    const shares = symbols.map((symbol, index) => [symbol, (100 * parts[index]!) / total]);
    return { symbols: [...symbols], parts, total, composition: Object.fromEntries(shares) };
  };
}
