import { type Outcome, numbersPerRankedPoint as stride } from '@tiegel/contract/terms';
import type { Ranking } from '@tiegel/engine';

/** A kept grid point by its numbers; score null where it has none. */
export interface KeptPoint {
  score: number | null;
  system: number;
  point: number;
  /** whether it is on the Pareto front */
  front: boolean;
}

/**
 * Every point that a search keeps, in the order of rank: the best of all, then those that are kept
 * only as the best of their system or as members of the Pareto front. The former are the first of
 * all points that passed, so that the latter are those that rank behind the last of them.
 */
export function* keptPoints(
  { best, bestOfSystems, front }: Outcome,
  { prefer, front: preferences = [] }: Ranking,
): Generator<KeptPoint> {
  const members = new Set<string>();
  const nameOf = ({ system, point }: KeptPoint) => `${system} ${point}`;
  const onFront = listed(front?.members ?? new Float64Array(), stride + preferences.length);
  for (const member of onFront) members.add(nameOf(member));
  const marked = (one: KeptPoint) =>
    members.size > 0 && members.has(nameOf(one)) ? { ...one, front: true } : one;

  let last: KeptPoint | null = null;
  for (let at = 0; at < best.length; at += stride) {
    last = listed(best.subarray(at, at + stride), stride)[0]!;
    yield marked(last);
  }
  const others = new Map<string, KeptPoint>();
  for (const one of [...listed(bestOfSystems, stride), ...onFront]) {
    if (last === null || compare(one, last, prefer) > 0) others.set(nameOf(one), one);
  }
  for (const one of [...others.values()].sort((a, b) => compare(a, b, prefer))) yield marked(one);
}

/** The points of a list in which each has so many numbers: score, system, point, and whatever follows. */
function listed(list: Float64Array, numbers: number): KeptPoint[] {
  return Array.from({ length: list.length / numbers }, (_, place) => {
    const at = place * numbers;
    const score = list[at]!;
    return {
      score: Number.isNaN(score) ? null : score,
      ...{ system: list[at + 1]!, point: list[at + 2]!, front: false },
    };
  });
}

/** By score, missing ones last; equal ones by composition, which is the order of the numbers. */
function compare(a: KeptPoint, b: KeptPoint, prefer: Ranking['prefer']): number {
  const key = ({ score }: KeptPoint) =>
    score === null ? Number.POSITIVE_INFINITY : prefer === 'high' ? -score : score;
  const [left, right] = [key(a), key(b)];
  if (left !== right) return left < right ? -1 : 1;
  return a.system - b.system || a.point - b.point;
}
