import { type Outcome, numbersPerRankedPoint as stride } from '@tiegel/contract';
import { mergeBestOfSystems } from './bestOfSystems.ts';
import { mergeRanked } from './rankedPoints.ts';
import type { Ranking } from './ranking.ts';

/**
 * The outcome of two disjoint parts of one search. Commutative and associative, so the result of
 * a search does not depend on how its chunks are shared out or in which order they come back.
 * It is not idempotent: a chunk must be merged once. Cost: linear in the points kept.
 */
export function mergeOutcomes(one: Outcome, other: Outcome, ranking: Ranking): Outcome {
  return {
    points: one.points + other.points,
    passed: one.passed + other.passed,
    passedEach: one.passedEach.map((count, limit) => count + other.passedEach[limit]!),
    outside: addedCounts(one.outside, other.outside),
    best: mergeRanked(one.best, other.best, ranking.keep, ranking.prefer),
    bestOfSystems: mergeBestOfSystems(one.bestOfSystems, other.bestOfSystems, ranking),
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

function addedCounts(one: Record<string, number>, other: Record<string, number>): Record<string, number> {
  const ids = [...new Set([...Object.keys(one), ...Object.keys(other)])].sort();
  return Object.fromEntries(ids.map((id) => [id, (one[id] ?? 0) + (other[id] ?? 0)]));
}
