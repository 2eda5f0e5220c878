import { type Outcome, numbersPerRankedPoint as stride } from '@tiegel/contract/terms';
import { mergeFronts, noFront } from '../front/mergeFronts.ts';
import type { Ranking } from '../prepared/ranking.ts';
import { mergeBestOfSystems } from './bestOfSystems.ts';
import { addRanked, mergeRanked } from './rankedPoints.ts';

/**
 * The outcome of two disjoint parts of one search. Commutative and associative, so the result of
 * a search does not depend on how its chunks are shared out or in which order they come back.
 * It is not idempotent: a chunk must be merged once. Cost: linear in the points kept.
 */
export function mergeOutcomes(one: Outcome, other: Outcome, ranking: Ranking): Outcome {
  return mergedBy(mergeRanked, one, other, ranking);
}

/** The same, made of the first of both, whose list of the best is gone then: see addRanked. */
export function addOutcome(one: Outcome, other: Outcome, ranking: Ranking): Outcome {
  return mergedBy(addRanked, one, other, ranking);
}

function mergedBy(merge: typeof mergeRanked, one: Outcome, other: Outcome, ranking: Ranking): Outcome {
  return {
    ...mergeCounts(one, other),
    best: merge(one.best, other.best, ranking.keep, ranking.prefer),
    bestOfSystems: mergeBestOfSystems(one.bestOfSystems, other.bestOfSystems, ranking),
    ...(ranking.front && { front: mergeFronts(one.front ?? noFront, other.front ?? noFront, ranking.front) }),
  };
}

/** What both have counted together. */
export function mergeCounts(
  one: Outcome,
  other: Outcome,
): Pick<Outcome, 'points' | 'passed' | 'passedEach' | 'outside'> {
  return {
    points: one.points + other.points,
    passed: both(one.passed, other.passed, (left, right) => left + right),
    passedEach: both(one.passedEach, other.passedEach, addedLists),
    outside: both(one.outside, other.outside, addedCounts),
  };
}

/**
 * The score that a point must reach to be kept, from what was merged so far; null while fewer
 * than `keep` points with a score are known.
 */
export function cutOffOf(outcome: Outcome, ranking: Ranking): number | null {
  if (ranking.keep === 0 || outcome.best.length < stride * ranking.keep) return null;
  const last = outcome.best[outcome.best.length - stride]!;
  return Number.isNaN(last) ? null : last;
}

/** What is not counted in one of the parts is not counted in the whole. */
function both<Count>(
  one: Count | null,
  other: Count | null,
  add: (one: Count, other: Count) => Count,
): Count | null {
  return one === null || other === null ? null : add(one, other);
}

function addedLists(one: number[], other: number[]): number[] {
  return one.map((count, limit) => count + other[limit]!);
}

function addedCounts(one: Record<string, number>, other: Record<string, number>): Record<string, number> {
  const ids = [...new Set([...Object.keys(one), ...Object.keys(other)])].sort();
  return Object.fromEntries(ids.map((id) => [id, (one[id] ?? 0) + (other[id] ?? 0)]));
}
