import type { Grid } from './grid.ts';

/**
 * The numbers of elements, among those allowed, for which the bounds leave any room: six elements
 * of at least 20 at.% each have no grid point, and a search need not go through all their
 * systems. Max is below min when no size is left.
 */
export function possibleSizes(grid: Grid): Grid['components'] {
  const { components } = grid;
  const none = { min: 1, max: 0 };
  const usable = grid.symbols.map((_, element) => grid.lowest[element]! <= grid.highest[element]!);
  if (grid.required.some((required, element) => required && !usable[element])) return none;
  const possible = (size: number): boolean => {
    const whole = grid.total ?? size;
    const least = leastSum(grid, usable, grid.lowest, size);
    const most = -leastSum(grid, usable, negated(grid.highest), size);
    return least <= whole && most >= whole;
  };
  const sizes = Array.from({ length: components.max + 1 }, (_, size) => size);
  const left = sizes.filter((size) => size >= components.min && possible(size));
  return left.length === 0 ? none : { min: left[0]!, max: left.at(-1)! };
}

/** The least sum of amounts over systems of so many elements; NaN, which meets no comparison, where there is none. */
function leastSum(grid: Grid, usable: readonly boolean[], amounts: readonly number[], size: number): number {
  const of = (required: boolean) =>
    amounts.filter((_, element) => usable[element] && grid.required[element] === required);
  const certain = of(true);
  const others = of(false).sort((one, other) => one - other);
  const free = size - certain.length;
  if (free < 0 || free > others.length) return Number.NaN;
  return [...certain, ...others.slice(0, free)].reduce((sum, amount) => sum + amount, 0);
}

function negated(amounts: readonly number[]): number[] {
  return amounts.map((amount) => -amount);
}
