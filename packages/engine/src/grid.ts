import { effectivePool, type GridFractions, partsOfBounds, type SearchSpecification } from '@tiegel/contract';
import { possibleSizes } from './possibleSizes.ts';
import { systemNumbering } from './systemNumbering.ts';

/**
 * The integer grid of a search. Amounts are parts: whole numbers whose sum is `total`, the
 * number of steps in 100 at.%. Arrays follow `symbols`.
 */
export interface Grid {
  /** The effective pool, pool and require without forbid, in alphabetical order. */
  symbols: readonly string[];
  required: readonly boolean[];
  /** How many elements a system may have, as far as the bounds leave room for it. */
  components: { min: number; max: number };
  /**
   * Parts that make the whole. Null for the equimolar grid: as many as the system has elements,
   * one part each, so that a system is one point.
   */
  total: number | null;
  /** Least and most parts of an element that is present; the least is above the most where no step lies between the bounds. */
  lowest: readonly number[];
  highest: readonly number[];
  /**
   * True when a chunk must hold its systems whole: the best of each system are cut to the best
   * 100,000 systems, and parts of a system that are cut before they meet would lose points.
   */
  wholeSystems: boolean;
}

/** At most so many systems keep their best points, the best systems first. */
export const mostSystemsKept = 100_000;

/** The grid that a checked specification describes. Bounds off the step are rounded inwards. */
export function gridOf(specification: SearchSpecification): Grid {
  const { elements, fractions, components, keepPerSystem } = specification;
  const symbols = effectivePool(elements);
  const bounds = symbols.map((symbol) =>
    fractions === 'equimolar' ? { lowest: 1, highest: 1 } : partsWithin(fractions, symbol),
  );
  const allowed: Grid = {
    symbols,
    required: symbols.map((symbol) => elements.require.includes(symbol)),
    components: { min: components.min, max: Math.min(components.max, symbols.length) },
    total: fractions === 'equimolar' ? null : stepsInWhole(fractions.step),
    lowest: bounds.map((one) => one.lowest),
    highest: bounds.map((one) => one.highest),
    wholeSystems: false,
  };
  const grid = { ...allowed, components: possibleSizes(allowed) };
  return { ...grid, wholeSystems: keepPerSystem > 1 && systemNumbering(grid).count > mostSystemsKept };
}

/** Parts that make the whole in a system of so many elements. */
export function wholeOf(grid: Grid, elements: number): number {
  return grid.total ?? elements;
}

function stepsInWhole(step: number): number {
  return Math.round(100 / step);
}

function partsWithin(fractions: GridFractions, symbol: string): { lowest: number; highest: number } {
  const { step, min, max } = { ...fractions, ...fractions.each[symbol] };
  const parts = partsOfBounds({ step, min, max });
  return parts === null
    ? { lowest: 1, highest: 0 }
    : { lowest: parts.least, highest: Math.min(parts.most, stepsInWhole(step)) };
}
