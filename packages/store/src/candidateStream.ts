import type { Candidate, CandidateQuery } from '@tiegel/contract';
import { candidateLine } from './candidateLine.ts';
import { isLined, selection, sorting } from './candidatePage.ts';
import { readCandidate, type StoredCandidate } from './candidateRow.ts';
import type { CandidateSet, CandidateSource } from './candidateSource.ts';
import { type Condition, filterOf } from './condition.ts';
import type { Connections } from './connections.ts';
import { storeProblem } from './storeProblem.ts';

/**
 * Every candidate that a query selects, in its order, read one by one on a read-only connection
 * of its own, which closes when the reading ends or is left.
 */
export function* candidateStream(
  connections: Connections,
  source: CandidateSource,
  set: CandidateSet,
  query: CandidateQuery,
): Generator<Candidate> {
  const { sql, values } = selected(source, set, query);
  const reader = connections.openReader();
  try {
    for (const row of reader.prepare(sql).iterate(...values)) {
      yield readCandidate(row as StoredCandidate, set.columns);
    }
  } catch (error) {
    throw storeProblem(error, reader.name);
  } finally {
    reader.close();
  }
}

function selected(source: CandidateSource, set: CandidateSet, query: CandidateQuery): Condition {
  if (!isLined(source, set, query)) return sorting(source, set, query, 'candidate.*');
  const line = candidateLine(source, set, query);
  return selection(line, line.low, line.high, filterOf(query, query.order));
}
