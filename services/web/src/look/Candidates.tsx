import { shareDecimals } from '../composition/shareDecimals.ts';
import { Failed } from '../frame/Failed.tsx';
import { useNarrow } from '../frame/useNarrow.ts';
import { Waiting } from '../frame/Waiting.tsx';
import { CandidateCards } from './CandidateCards.tsx';
import { CandidateTable } from './CandidateTable.tsx';
import { columnsOf } from './columns.ts';
import { isFiltered } from './filters.ts';
import type { LookProps } from './lookView.ts';
import { NothingMeets } from './NothingMeets.tsx';
import { useCandidates } from './useCandidates.ts';
import { selectionOf } from './viewState.ts';

/** The candidates of a view as a table, on a small screen as cards; and what stands there while there are none. */
export function Candidates({ search, quantities, view, change }: LookProps) {
  const { id, specification, kept, prices } = search;
  const narrow = useNarrow();
  const { rows, error, refetch, isPlaceholderData, isPending, onEnd } = useCandidates(id, view);
  const shared = {
    searchId: id,
    rows,
    columns: columnsOf(view.columns, specification, quantities),
    currency: prices?.currency,
    shareDecimals: shareDecimals(specification.fractions),
    onEnd,
  };
  if (error && rows.length === 0)
    return <Failed error={error} what="The candidates" onRetry={() => void refetch()} />;
  if (isPending) return <Waiting what="Fetching the candidates" />;
  if (rows.length === 0) return <NothingMeets view={view} change={change} />;
  return (
    <>
      {error ? <Failed error={error} what="The rows that follow" onRetry={() => void refetch()} /> : null}
      <div className={isPlaceholderData ? 'look-stale' : undefined} aria-busy={isPlaceholderData}>
        {narrow ? (
          <CandidateCards {...shared} />
        ) : (
          <CandidateTable
            {...shared}
            selection={`${selectionOf(view)} ${view.at}`}
            firstRow={view.at}
            total={isFiltered(view.filters) ? null : kept}
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
