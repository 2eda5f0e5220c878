/**
 * A list of ranked grid points, best first: three numbers for each, in one flat array
 * [score, system, point, score, system, point, ...]. `system` is the combinatorial rank of the
 * element system, `point` the number of the grid point inside it. A score of NaN means that the
 * ranked quantity has no value there; such points stand last.
 */
export type RankedPoints = Float64Array;
export const numbersPerRankedPoint = 3;

/**
 * A Pareto front as far as it is known.
 *
 * - `members`: (3 + quantities) numbers for each in one flat array: score, system, point, then the
 *   value of each quantity of the front; the best in the first quantity first, equal ones by the
 *   next, then by system and point. So a point stands behind whatever dominates it.
 * - `cut`: null where the front is complete. Else more members were found than are kept: it is the
 *   place, written as a member, up to which none is missing; all that are listed are members.
 */
export interface Front {
  members: Float64Array;
  cut: Float64Array | null;
}

/**
 * What scoring found, of bounded size. One chunk's outcome and a whole search's have the same
 * form; packages/engine merges them, in any order.
 *
 * - `points`: grid points gone through, looked at or not.
 * - `passed`: those that meet every limit; null where nothing is counted (tally none).
 * - `passedEach`: passes of each limit alone, in the order of the specification's limits; null
 *   unless each is counted (tally each).
 * - `outside`: for a limited quantity, how many points have no value of it; only where not 0; null
 *   where passedEach is.
 * - `best`: the best `keep` points that pass.
 * - `front`: the Pareto front of those that pass, there exactly when the search asks for one.
 * - `bestOfSystems`: the best `keepPerSystem` of each system, of the 100,000 best systems; grouped
 *   by system, the systems in the order of their best point.
 */
export interface Outcome {
  points: number;
  passed: number | null;
  passedEach: number[] | null;
  outside: Record<string, number> | null;
  best: RankedPoints;
  bestOfSystems: RankedPoints;
  front?: Front;
}
