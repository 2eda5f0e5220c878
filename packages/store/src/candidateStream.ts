import type { Candidate, CandidateQuery } from '@tiegel/contract';
import { type CandidateIndexes, READ_WHOLE } from './candidateIndexes.ts';
import { stretches } from './candidateOrder.ts';
import { sorted } from './candidatePage.ts';
import { readCandidate, type StoredCandidate } from './candidateRow.ts';
import type { CandidateSet } from './candidateTable.ts';
import { always, both, type Condition, condition, filterOf } from './condition.ts';
import type { Connections } from './connections.ts';
import { storeProblem } from './storeProblem.ts';

/**
 * Every candidate that a query selects, in its order, read one by one on a read-only connection
 * of its own, which closes when the reading ends or is left.
 */
export function* candidateStream(
  connections: Connections,
  indexes: CandidateIndexes,
  set: CandidateSet,
  query: CandidateQuery,
): Generator<Candidate> {
  const small = set.kept <= READ_WHOLE;
  if (query.order !== 'rank' && !small) indexes.require(set, query.order, query.direction);
  const connection = connections.openReader();
  try {
    const reading = { connection, indexes, set, query };
    const parts = small ? [sorted(reading, '*', always)] : inStretches(set, query);
    for (const { sql, values } of parts) {
      for (const row of connection.prepare(sql).iterate(...values)) {
        yield readCandidate(row as StoredCandidate, set.columns);
      }
    }
  } catch (error) {
    throw storeProblem(error, connection.name);
  } finally {
    connection.close();
  }
}

function inStretches(set: CandidateSet, query: CandidateQuery): Condition[] {
  const filter = filterOf(query, query.order === 'rank' ? null : query.order);
  return stretches(query, null).map((stretch) => {
    const { sql, values } = both(condition('search = ?', set.search), stretch.where, filter);
    return {
      sql: `select * from candidate indexed by ${stretch.index} where ${sql} order by ${stretch.orderBy}`,
      values,
    };
  });
}
