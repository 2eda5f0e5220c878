import type { CandidatePage, CandidateQuery } from '@tiegel/contract';
import { type CandidateLine, lineSteps } from './candidateLine.ts';
import type { CandidateRows } from './candidateRows.ts';
import type { CandidateSet } from './candidateSet.ts';
import type { CandidateSource } from './candidateSource.ts';
import { pageKey, placeOf } from './pageKey.ts';

/**
 * A page of candidates. Filters and order are worked out on whole columns in memory, a pass of a
 * millisecond for each filter of 10⁶ candidates, and only the page's rows are read.
 */
export function candidatePage(
  { arrays, rows }: CandidateSource,
  set: CandidateSet,
  query: CandidateQuery,
): Pick<CandidatePage, 'items' | 'next'> {
  const start = query.after === undefined ? 0 : placeOf(query, query.after) + 1;
  const line = finished(lineSteps(arrays, set, query));
  const found = line.take(query.at ? line.skip(0, query.at) : start, query.limit + 1);
  const shown = found.slice(0, query.limit);
  return {
    items: read(
      rows,
      set,
      shown.map(({ rank }) => rank),
    ),
    next: found.length > query.limit ? pageKey(query, shown.at(-1)!.place) : null,
  };
}

function read(rows: CandidateRows, set: CandidateSet, ranks: readonly number[]) {
  const at = rows.reader(set);
  return ranks.flatMap((rank) => at(rank) ?? []);
}

/** Goes through all steps at once. */
export function finished(steps: Generator<void, CandidateLine>): CandidateLine {
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value;
  }
}
