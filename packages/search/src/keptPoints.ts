import { type Outcome, numbersPerRankedPoint as stride } from '@tiegel/contract';
import type { Ranking } from '@tiegel/engine';

/** A kept grid point by its numbers; score null where it has none. */
export interface KeptPoint {
  score: number | null;
  system: number;
  point: number;
}

/**
 * Every point that a search keeps, in the order of rank: the best of all, then those that are kept
 * only as the best of their system. The former are the first of all points that passed, so that
 * the latter are those that rank behind the last of them.
 */
export function* keptPoints({ best, bestOfSystems }: Outcome, { prefer }: Ranking): Generator<KeptPoint> {
  for (let at = 0; at < best.length; at += stride) yield pointAt(best, at);
  const last = best.length === 0 ? null : pointAt(best, best.length - stride);
  const others: KeptPoint[] = [];
  for (let at = 0; at < bestOfSystems.length; at += stride) {
    const point = pointAt(bestOfSystems, at);
    if (last === null || compare(point, last, prefer) > 0) others.push(point);
  }
  yield* others.sort((a, b) => compare(a, b, prefer));
}

function pointAt(list: Float64Array, at: number): KeptPoint {
  const score = list[at]!;
  return { score: Number.isNaN(score) ? null : score, system: list[at + 1]!, point: list[at + 2]! };
}

/** By score, missing ones last; equal ones by composition, which is the order of the numbers. */
function compare(a: KeptPoint, b: KeptPoint, prefer: Ranking['prefer']): number {
  const key = ({ score }: KeptPoint) =>
    score === null ? Number.POSITIVE_INFINITY : prefer === 'high' ? -score : score;
  const [left, right] = [key(a), key(b)];
  if (left !== right) return left < right ? -1 : 1;
  return a.system - b.system || a.point - b.point;
}
