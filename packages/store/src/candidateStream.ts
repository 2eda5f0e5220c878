import type { Candidate, CandidateQuery } from '@tiegel/contract';
import { lineSteps } from './candidateLine.ts';
import { finished } from './candidatePage.ts';
import { candidateRows } from './candidateRows.ts';
import type { CandidateSet } from './candidateSet.ts';
import type { CandidateSource } from './candidateSource.ts';
import type { Connections } from './connections.ts';
import { storeProblem } from './storeProblem.ts';

/** So many ranks are looked up at a time. */
const ranksAtOnce = 1_000;

/**
 * Every candidate that a query selects, in its order, read one by one on a read-only connection
 * of its own, which closes when the reading ends or is left.
 */
export function* candidateStream(
  connections: Connections,
  { arrays }: CandidateSource,
  set: CandidateSet,
  query: CandidateQuery,
): Generator<Candidate> {
  const line = finished(lineSteps(arrays, set, query));
  const reader = connections.openReader();
  try {
    const rowAt = candidateRows(reader).reader(set);
    for (let from: number | null = 0; from !== null; ) {
      const { ranks, last } = line.take(from, ranksAtOnce);
      for (const rank of ranks) {
        const candidate = rowAt(rank);
        if (candidate) yield candidate;
      }
      from = last === null ? null : last + 1;
    }
  } catch (error) {
    throw storeProblem(error, reader.name);
  } finally {
    reader.close();
  }
}
