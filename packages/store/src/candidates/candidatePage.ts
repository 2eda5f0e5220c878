import type { CandidatePage, CandidateQuery } from '@tiegel/contract';
import { pageSteps } from './candidateLine.ts';
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
  const { ranks, last } = finished(pageSteps(arrays, set, query, startOf(set, query)));
  return { items: rows.read(set, ranks), next: last === null ? null : pageKey(set, query, last) };
}

/** The place from which on a query's page is read; its row number aside. Throws request/invalid for a key that is not one of its search, filters and order. */
export function startOf(set: CandidateSet, query: CandidateQuery): number {
  return query.after === undefined ? 0 : placeOf(set, query, query.after) + 1;
}

/** Goes through all steps at once. */
export function finished<Found>(steps: Generator<unknown, Found>): Found {
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value;
  }
}
