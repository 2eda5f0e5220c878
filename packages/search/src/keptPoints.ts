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
 * only as the best of their system. No point stands in both parts of the outcome's lists that is
 * not among the best of all, and what is not among them ranks behind all of them.
 */
export function* keptPoints({ best, bestOfSystems }: Outcome, { prefer }: Ranking): Generator<KeptPoint> {
  const among = new Set<string>();
  for (let at = 0; at < best.length; at += stride) {
    const point = pointAt(best, at);
    among.add(nameOf(point));
    yield point;
  }
  const others: KeptPoint[] = [];
  for (let at = 0; at < bestOfSystems.length; at += stride) {
    const point = pointAt(bestOfSystems, at);
    if (!among.has(nameOf(point))) others.push(point);
  }
  yield* others.sort((a, b) => compare(a, b, prefer));
}

function pointAt(list: Float64Array, at: number): KeptPoint {
  const score = list[at]!;
  return { score: Number.isNaN(score) ? null : score, system: list[at + 1]!, point: list[at + 2]! };
}

function nameOf({ system, point }: KeptPoint): string {
  return `${system}.${point}`;
}

/** By score, missing ones last; equal ones by composition, which is the order of the numbers. */
function compare(a: KeptPoint, b: KeptPoint, prefer: Ranking['prefer']): number {
  const key = ({ score }: KeptPoint) =>
    score === null ? Number.POSITIVE_INFINITY : prefer === 'high' ? -score : score;
  const [left, right] = [key(a), key(b)];
  if (left !== right) return left < right ? -1 : 1;
  return a.system - b.system || a.point - b.point;
}
