import type { Candidate, CandidateQuery, SearchView } from '@tiegel/contract';
import type { Searches } from '@tiegel/search';
import { progressBar } from '../output/progressBar.ts';
import { notDone } from './notDone.ts';

/** Every kept candidate, best first. */
export const everyCandidate: CandidateQuery = {
  ranges: [],
  has: [],
  without: [],
  order: 'rank',
  direction: 'asc',
  limit: 1000,
};

/**
 * Carries a request through to its end, showing progress.
 * @throws ProblemError with all that is wrong with it; command/search-ended where it did not get done
 */
export async function runSearch(searches: Searches, request: unknown): Promise<SearchView> {
  const bar = await progressBar();
  const { id } = await searches.submit(request);
  const { notices } = searches.view(id);
  tell(notices);
  const stop = searches.watch(id, bar.show);
  const view = await searches.finished(id).finally(() => {
    stop();
    bar.stop();
  });
  if (view.state !== 'done') throw notDone(view);
  tell(view.notices.slice(notices.length));
  return view;
}

function tell(notices: readonly string[]): void {
  for (const notice of notices) console.error(`Notice: ${notice}`);
}

/** The kept candidates that a query selects, streamed. */
export function candidatesOf(
  searches: Searches,
  id: string,
  query: CandidateQuery = everyCandidate,
): Iterable<Candidate> {
  return searches.export(id, query).rows;
}
