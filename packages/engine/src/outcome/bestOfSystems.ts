import { type RankedPoints, numbersPerRankedPoint as stride } from '@tiegel/contract/terms';
import type { Ranking } from '../prepared/ranking.ts';
import { compareRanked, mergeRanked } from './rankedPoints.ts';

/** At most so many systems keep their best points, the best systems first. */
export const mostSystemsKept = 100_000;

/**
 * The best points of each system, of at most the 100,000 best systems, out of two such lists: the
 * systems in the order of their best points, and the points of each from its best on.
 *
 * Both lists may hold a system only where none was cut from either, or where a single point of
 * each system is kept: else the order of merging would show in the result. That is why such a
 * grid keeps its systems whole (Grid.wholeSystems).
 */
export function mergeBestOfSystems(one: RankedPoints, other: RankedPoints, ranking: Ranking): RankedPoints {
  if (one.length === 0 || other.length === 0) return one.length === 0 ? other : one;
  const systems = new Set(systemsOf(one));
  const both = systemsOf(other).filter((system) => systems.has(system));
  const merged = both.map((system) => {
    const [left, right] = [pointsOf(one, system), pointsOf(other, system)];
    return mergeRanked(left, right, ranking.keepPerSystem, ranking.prefer);
  });
  return bestSystems(joined([without(one, both), without(other, both), ...merged]), ranking);
}

/** The points of the best systems, from a list that holds the points of each system together, its best first. */
export function bestSystems(points: RankedPoints, { prefer }: Ranking): RankedPoints {
  const starts = startsOf(points)
    .sort((left, right) => compareRanked(points, left, points, right, prefer))
    .slice(0, mostSystemsKept);
  const best = new Float64Array(points.length);
  let length = 0;
  for (const start of starts) {
    const end = endOf(points, start);
    for (let at = start; at < end; at += 1) {
      best[length] = points[at]!;
      length += 1;
    }
  }
  return best.slice(0, length);
}

/** Where the points of each system begin. */
function startsOf(points: RankedPoints): number[] {
  const starts: number[] = [];
  for (let at = 0; at < points.length; at = endOf(points, at)) starts.push(at);
  return starts;
}

/** Where the points of the system end whose points begin at a place. */
function endOf(points: RankedPoints, start: number): number {
  let at = start + stride;
  while (at < points.length && points[at + 1] === points[start + 1]) at += stride;
  return at;
}

function systemsOf(points: RankedPoints): number[] {
  return startsOf(points).map((start) => points[start + 1]!);
}

/** The points of one system, which the list holds. */
function pointsOf(points: RankedPoints, system: number): RankedPoints {
  const start = startsOf(points).find((one) => points[one + 1] === system)!;
  return points.subarray(start, endOf(points, start));
}

/** A list without the points of some systems, few if any. */
function without(points: RankedPoints, systems: readonly number[]): RankedPoints {
  if (systems.length === 0) return points;
  return points.filter((_, at) => !systems.includes(points[at - (at % stride) + 1]!));
}

function joined(lists: readonly RankedPoints[]): RankedPoints {
  const points = new Float64Array(lists.reduce((length, list) => length + list.length, 0));
  let at = 0;
  for (const list of lists) {
    points.set(list, at);
    at += list.length;
  }
  return points;
}
