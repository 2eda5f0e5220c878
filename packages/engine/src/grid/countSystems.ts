import type { Grid } from './grid.ts';

/**
 * How many systems have at least one grid point, exactly, in closed form. With bounds that are
 * in order for each element, a system has none when its least amounts exceed the whole or its
 * greatest fall short of it, never both: those are counted by a recursion over the pool by
 * (elements chosen, sum of the bound). Cost: elements × components × steps.
 */
export function countSystems(grid: Grid): number {
  if (grid.total === null) return countChoices(grid, grid.lowest, Number.POSITIVE_INFINITY);
  return countChoices(grid, grid.lowest, grid.total) - countChoices(grid, grid.highest, grid.total - 1);
}

/** Systems of elements with bounds in order for which the sum of `amounts` is at most `most`. */
function countChoices(grid: Grid, amounts: readonly number[], most: number): number {
  const { required, components } = grid;
  const sums = Math.min(most, grid.total ?? components.max);
  /** chosen elements → sum of their amounts → systems */
  const counts = Array.from({ length: components.max + 1 }, () => new Float64Array(sums + 1));
  counts[0]![0] = 1;
  for (const [place, amount] of amounts.entries()) {
    const possible = grid.lowest[place]! <= grid.highest[place]!;
    for (let chosen = components.max; chosen >= 0; chosen -= 1) {
      const here = counts[chosen]!;
      if (required[place]) here.fill(0);
      const fewer = counts[chosen - 1];
      if (!fewer || !possible) continue;
      for (let sum = amount; sum <= sums; sum += 1) here[sum] = here[sum]! + fewer[sum - amount]!;
    }
  }
  let systems = 0;
  for (const of of counts.slice(components.min)) for (const count of of) systems += count;
  return systems;
}
