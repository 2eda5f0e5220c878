import type { Candidate, CandidateQuery } from '@tiegel/contract';
import type { Connections } from '../sharing/connections.ts';
import { storeProblem } from '../storeProblem.ts';
import { lineSteps } from './candidateLine.ts';
import { finished } from './candidatePage.ts';
import { candidateRows } from './candidateRows.ts';
import type { CandidateSet } from './candidateSet.ts';
import type { CandidateSource } from './candidateSource.ts';

/** So many are read at a time: others are answered in between. */
const readAtOnce = 200;

/**
 * Every candidate that a query selects, in its order, read some at a time on a read-only
 * connection of its own, which closes when the reading ends or is left.
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
    const rows = candidateRows(reader);
    for (let from: number | null = 0; from !== null; ) {
      const { ranks, last } = line.take(from, readAtOnce);
      yield* rows.read(set, ranks);
      from = last === null ? null : last + 1;
    }
  } catch (error) {
    throw storeProblem(error, reader.name);
  } finally {
    reader.close();
  }
}
