import type { Candidate, CandidateQuery, SearchView } from '@tiegel/contract';
import type { Searches } from '@tiegel/search';
import { type ProgressBar, progressBar } from '../output/progressBar.ts';
import { notDone } from './notDone.ts';
import { pauseOnSignal } from './pauseOnSignal.ts';

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
 * Carries a request through to its end, showing progress. A signal pauses it where a database is named to keep it.
 * @throws ProblemError with all that is wrong with it; command/search-ended where it did not get done
 */
export async function runSearch(
  searches: Searches,
  request: unknown,
  database?: string,
): Promise<SearchView> {
  const bar = await progressBar();
  const { id } = await searches.submit(request);
  return ended(searches, id, { bar, database });
}

/**
 * The same for a search that is there, at the points that were not looked at.
 * @throws ProblemError search/unknown, search/not-possible, command/search-ended
 */
export async function resumeSearch(searches: Searches, id: string, database: string): Promise<SearchView> {
  const bar = await progressBar();
  searches.resume(id);
  return ended(searches, id, { bar, database });
}

async function ended(
  searches: Searches,
  id: string,
  { bar, database }: { bar: ProgressBar; database: string | undefined },
): Promise<SearchView> {
  const { notices } = searches.view(id);
  tell(notices);
  const stop = searches.watch(id, bar.show);
  const release =
    database === undefined ? () => {} : pauseOnSignal(searches, id, { database, clear: bar.stop });
  const view = await searches.finished(id).finally(() => {
    release();
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
