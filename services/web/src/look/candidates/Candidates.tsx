import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { shareDecimals } from '../../composition/shareDecimals.ts';
import { Failed } from '../../frame/Failed.tsx';
import { useNarrow } from '../../frame/useNarrow.ts';
import { columnsOf } from '../columns.ts';
import { isFiltered } from '../filters/filters.ts';
import { NothingMeets } from '../filters/NothingMeets.tsx';
import { valuesQuery } from '../lookQueries.ts';
import type { LookProps } from '../lookView.ts';
import type { Marks } from '../marks/useMarks.ts';
import { selectionOf, type ViewState } from '../viewState.ts';
import { CandidateCards } from './CandidateCards.tsx';
import { CandidateTable } from './CandidateTable.tsx';
import { Selecting } from './Selecting.tsx';
import { useCandidates } from './useCandidates.ts';

/** The candidates as a table, on a small screen as cards; and what stands there while there are none. */
export function Candidates({ search, quantities, view, change, marks }: LookProps & { marks: Marks }) {
  const { id, specification, kept, prices } = search;
  const narrow = useNarrow();
  const filtered = isFiltered(view.filters);
  const meeting = useQuery({ ...valuesQuery(id, view.filters, [], 1), enabled: filtered });
  const { rows, error, refetch, isStale, isFetching, isPending, onEnd } = useCandidates(id, view);
  const [before, setBefore] = useState<ViewState | null>(null);
  if (!isStale && !isPending && !error && before !== view) setBefore(view);
  const nameOf = (name: string) =>
    (quantities.find((one) => one.id === name)?.name ?? name).replace(/^[A-Z](?=[a-z])/, (letter) =>
      letter.toLowerCase(),
    );
  const shared = {
    searchId: id,
    rows,
    columns: columnsOf(view.columns, specification, quantities),
    currency: prices?.currency,
    shareDecimals: shareDecimals(specification.fractions),
    marks,
    onEnd,
  };
  if (error && rows.length === 0)
    return <Failed error={error} what="The candidates" onRetry={() => void refetch()} />;
  const selecting = (
    <Selecting
      searchId={id}
      asked={view}
      before={before}
      kept={kept}
      nameOf={nameOf}
      onStop={() => before && change(before)}
    />
  );
  if (isPending) return selecting;
  if (rows.length === 0) return <NothingMeets view={view} change={change} />;
  return (
    <>
      {error ? (
        <Failed
          error={error}
          what={isStale ? 'The rows that are asked for' : 'The rows that follow'}
          onRetry={() => void refetch()}
        />
      ) : null}
      {isStale && isFetching && !error ? selecting : null}
      <div className={isStale ? 'look-stale' : undefined} aria-busy={isStale}>
        {narrow ? (
          <CandidateCards {...shared} />
        ) : (
          <CandidateTable
            {...shared}
            selection={`${selectionOf(view)} ${view.at}`}
            firstRow={view.at}
            total={filtered ? (meeting.data?.meeting ?? null) : kept}
            components={specification.components.max}
            order={view.order}
            direction={view.direction}
            onOrder={(order, direction) => change({ order, direction })}
          />
        )}
      </div>
    </>
  );
}
