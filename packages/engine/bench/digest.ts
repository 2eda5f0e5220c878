import { createHash } from 'node:crypto';
import { type Outcome, numbersPerRankedPoint as stride } from '@tiegel/contract';

/** What must be equal on all sides: the counts, null where a side does not count, and which points are kept in which order. */
export interface Digest {
  points: number;
  passed: number | null;
  passedEach: readonly number[] | null;
  /** Of 'system point' of each kept point, best first. */
  ids: string;
}

export function digestOf(counts: Omit<Digest, 'ids'>, ids: readonly string[]): Digest {
  const { points, passed, passedEach } = counts;
  const hash = createHash('sha256').update(ids.join('\n')).digest('hex').slice(0, 16);
  return { points, passed, passedEach, ids: `${ids.length} ${hash}` };
}

export function digestOfOutcome(outcome: Outcome): Digest {
  const { best } = outcome;
  const ids = Array.from(
    { length: best.length / stride },
    (_, at) => `${best[at * stride + 1]} ${best[at * stride + 2]}`,
  );
  return digestOf(outcome, ids);
}

/** Where two digests differ, in words; null where they agree. A count that a side does not give is not compared. */
export function differenceOf(one: Digest, other: Digest): string | null {
  for (const key of ['points', 'passed', 'passedEach', 'ids'] as const) {
    const [left, right] = [one[key], other[key]];
    if (left !== null && right !== null && String(left) !== String(right))
      return `${key}: ${left} and ${right}`;
  }
  return null;
}
