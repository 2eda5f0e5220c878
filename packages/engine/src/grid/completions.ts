import type { Grid } from './grid.ts';
import { windowSums } from './windowSums.ts';

/**
 * In how many ways a part of a grid point can be completed: layer[chosen][parts] counts the
 * choices of elements from some place of the pool on, with amounts, that bring `chosen` elements
 * to an allowed number and add exactly `parts`. Required elements are always chosen.
 */
export type CompletionLayer = readonly Float64Array[];

/** The layer behind the last element of the pool. `total` parts make the whole. */
export function lastCompletions(grid: Grid, total: number): CompletionLayer {
  return Array.from({ length: grid.components.max + 1 }, (_, chosen) => {
    const counts = new Float64Array(total + 1);
    counts[0] = chosen >= grid.components.min ? 1 : 0;
    return counts;
  });
}

/**
 * The layer of an element's place from that of the place behind it. Counts below 2^53 are exact;
 * with a `modulus` they are residues (see windowSums).
 */
export function completionsBefore(
  grid: Grid,
  place: number,
  behind: CompletionLayer,
  modulus = Number.POSITIVE_INFINITY,
): CompletionLayer {
  const without = !grid.required[place];
  return behind.map((skipped, chosen) => {
    const taken = behind[chosen + 1];
    const counts = taken
      ? windowSums(taken, grid.lowest[place]!, grid.highest[place]!, modulus)
      : new Float64Array(skipped.length);
    if (!without) return counts;
    for (let parts = 0; parts < counts.length; parts += 1) {
      const sum = counts[parts]! + skipped[parts]!;
      counts[parts] = sum >= modulus ? sum - modulus : sum;
    }
    return counts;
  });
}
