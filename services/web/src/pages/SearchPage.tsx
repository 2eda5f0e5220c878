import { useQuery } from '@tanstack/react-query';
import { Suspense, useEffect } from 'react';
import { useParams } from 'wouter';
import { Failed } from '../frame/Failed.tsx';
import type { Key } from '../frame/KeysDialog.tsx';
import { latePart } from '../frame/latePart.tsx';
import { useTitle } from '../frame/useTitle.ts';
import { Waiting } from '../frame/Waiting.tsx';
import { ResultView } from '../look/ResultView.tsx';
import { formatPercent } from '../numbers/formatNumber.ts';
import { isUnfinished, quantitiesQuery } from '../server/queries.ts';
import { useSearchView } from '../server/useSearchView.ts';
import { LimitTable } from '../watch/LimitTable.tsx';
import { NothingFound } from '../watch/NothingFound.tsx';
import { ProgressPanel } from '../watch/ProgressPanel.tsx';
import { SchedulePanel } from '../watch/SchedulePanel.tsx';
import { SearchHead } from '../watch/SearchHead.tsx';
import { Stopped } from '../watch/Stopped.tsx';
import { TellMe } from '../watch/TellMe.tsx';
import { watchSearch } from '../watch/watchedSearches.ts';
import '../watch/watch.css';

const BestSoFar = latePart(async () => (await import('../watch/BestSoFar.tsx')).BestSoFar);

export const searchKeys: readonly Key[] = [
  { keys: '↑, ↓', does: 'walk the rows of the table' },
  { keys: 'Page up, Page down', does: 'a dozen rows at once' },
  { keys: 'Home, End', does: 'to the first and the last row that is there' },
  { keys: 'Enter', does: 'opens the candidate of the row' },
  { keys: 'Shift+↑, Shift+↓', does: 'select rows' },
  { keys: 'Space', does: 'marks the row, or the selected rows, to compare them or put them on a shortlist' },
  { keys: 'Ctrl+C', does: 'copies the selected rows as CSV' },
  { keys: '←, ↑, →, ↓', does: 'in a figure: walk its points or bars' },
  { keys: 'Page up, Page down', does: 'in a scatter: to the better or the next rank' },
  { keys: 'Space', does: 'in a scatter: marks the point that is read' },
  { keys: 'Shift+arrow', does: 'in a scatter: stretches the rectangle that selects' },
  { keys: 'Escape', does: 'drops the selection of rows or points' },
];

/** A search: how it goes while it runs, then what it found. */
export function SearchPage() {
  const { id = '' } = useParams<{ id: string }>();
  const { data: search, error, refetch } = useSearchView(id);
  const quantities = useQuery(quantitiesQuery);
  const name = search?.name || 'Search';
  const part =
    search && isUnfinished(search) ? `${formatPercent(search.progress.points, search.progress.total)} ` : '';
  useTitle(part + name);
  const atWork = search !== undefined && isUnfinished(search);
  useEffect(() => {
    if (atWork) watchSearch(id);
  }, [atWork, id]);

  const failure = error ?? quantities.error;
  if (failure && !(search && quantities.data)) {
    return (
      <Failed
        error={failure}
        what="The search"
        list={{ to: '/searches', name: 'all searches' }}
        onRetry={() => void (error ? refetch() : quantities.refetch())}
      />
    );
  }
  if (!search || !quantities.data) return <Waiting what="Fetching the search" />;
  const { state, counts, kept, specification } = search;
  const limited = specification.limits.length > 0;
  return (
    <div className="column">
      <div className="search-top">
        <div className="column">
          <SearchHead search={search} quantities={quantities.data} />
          {isUnfinished(search) ? (
            <>
              <ProgressPanel search={search} />
              <SchedulePanel search={search} />
              <TellMe />
              <Suspense>
                <BestSoFar search={search} quantities={[...quantities.data, ...search.moreQuantities]} />
              </Suspense>
            </>
          ) : null}
          {state === 'cancelled' || state === 'failed' ? <Stopped search={search} /> : null}
          {state === 'done' && kept === 0 ? <NothingFound search={search} /> : null}
        </div>
        {limited && counts.points > 0 ? <LimitTable search={search} quantities={quantities.data} /> : null}
      </div>
      {state === 'done' && kept > 0 ? <ResultView search={search} quantities={quantities.data} /> : null}
    </div>
  );
}
