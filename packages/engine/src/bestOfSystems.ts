import { type RankedPoints, numbersPerRankedPoint as stride } from '@tiegel/contract';
import { mostSystemsKept } from './grid.ts';
import { compareRanked, mergeRanked } from './rankedPoints.ts';
import type { Ranking } from './ranking.ts';

/**
 * The best points of each system, of at most the 100,000 best systems: the systems in the order
 * of their best points, and the points of each from its best on.
 *
 * Two such lists may both hold a system only where none was cut from either, or where a single
 * point of each system is kept: else the order of merging could be seen in the result. That is
 * why such a grid keeps its systems whole (Grid.wholeSystems).
 */
export function mergeBestOfSystems(one: RankedPoints, other: RankedPoints, ranking: Ranking): RankedPoints {
  if (one.length === 0 || other.length === 0) return one.length === 0 ? other : one;
  const [more, fewer] = one.length >= other.length ? [one, other] : [other, one];
  const joining = new Map(groupsOf(fewer).map((group) => [group[1]!, group]));
  const groups = groupsOf(more).map((group) => {
    const same = joining.get(group[1]!);
    if (!same) return group;
    joining.delete(group[1]!);
    return mergeRanked(group, same, ranking.keepPerSystem, ranking.prefer);
  });
  return joined(bestSystems([...groups, ...joining.values()], ranking));
}

/** The lists of the best systems, best first; each list holds the points of one system. */
export function bestSystems(groups: RankedPoints[], { prefer }: Ranking): RankedPoints[] {
  return groups.sort((one, other) => compareRanked(one, 0, other, 0, prefer)).slice(0, mostSystemsKept);
}

/** Lists of points as one. */
export function joined(groups: readonly RankedPoints[]): RankedPoints {
  const points = new Float64Array(groups.reduce((length, group) => length + group.length, 0));
  let at = 0;
  for (const group of groups) {
    points.set(group, at);
    at += group.length;
  }
  return points;
}

/** The list of each system, as views. */
function groupsOf(points: RankedPoints): RankedPoints[] {
  const groups: RankedPoints[] = [];
  let start = 0;
  for (let at = stride; at <= points.length; at += stride) {
    if (at < points.length && points[at + 1] === points[start + 1]) continue;
    groups.push(points.subarray(start, at));
    start = at;
  }
  return groups;
}
