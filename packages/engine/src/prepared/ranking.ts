import type { FrontEntry, SearchSpecification } from '@tiegel/contract';

/** How grid points are ordered, and how many of them an outcome keeps. */
export interface Ranking {
  /** Which score is the better one; for a target the score is the distance to it, and low is better. */
  prefer: 'high' | 'low';
  /** The best so many points are kept. */
  keep: number;
  /** And the best so many of each system. */
  keepPerSystem: number;
  /** What is better of each quantity of the Pareto front; there exactly when one is asked for. */
  front?: readonly FrontEntry['prefer'][];
}

/** The ranking that a specification asks for. Several entries are combined to a desirability, of which high is better. */
export function rankingOf(specification: SearchSpecification): Ranking {
  const { rank, keep, keepPerSystem } = specification;
  const [entry] = rank;
  const prefer = rank.length > 1 || entry?.prefer === 'high' ? 'high' : 'low';
  const front = specification.front && { front: specification.front.map((one) => one.prefer) };
  return { prefer, keep, keepPerSystem, ...front };
}

/**
 * A score as a number of which the least is best, so that ordering points is comparing three
 * numbers: this key, the system and the point. A missing score (NaN) comes last, as Infinity.
 */
export function keyOf(score: number, prefer: Ranking['prefer']): number {
  if (Number.isNaN(score)) return Number.POSITIVE_INFINITY;
  return prefer === 'high' ? -score : score;
}

/** The score that has a key. */
export function scoreOf(key: number, prefer: Ranking['prefer']): number {
  if (key === Number.POSITIVE_INFINITY) return Number.NaN;
  return prefer === 'high' ? -key : key;
}
