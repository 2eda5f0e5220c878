import type { SearchView } from '@tiegel/contract';
import { effectivePool } from '@tiegel/contract';
import { shareDecimals } from '../composition/shareDecimals.ts';
import { Failed } from '../frame/Failed.tsx';
import { useNarrow } from '../frame/useNarrow.ts';
import { Waiting } from '../frame/Waiting.tsx';
import { formatCount } from '../numbers/formatNumber.ts';
import type { QuantityView } from '../server/types.ts';
import { CandidateCards } from './CandidateCards.tsx';
import { CandidateTable } from './CandidateTable.tsx';
import { ColumnChoice } from './ColumnChoice.tsx';
import { askedFirst, columnsOf } from './columns.ts';
import { ExportLinks } from './ExportLinks.tsx';
import { FilterBar } from './FilterBar.tsx';
import { isFiltered, noFilters } from './filters.ts';
import './look.css';
import { OrderChoice } from './OrderChoice.tsx';
import { RowChoice } from './RowChoice.tsx';
import { useCandidates } from './useCandidates.ts';
import { useView } from './useView.ts';
import { selectionOf } from './viewState.ts';

/** The kept candidates of a finished search: filters, order, columns, files, and the table or its cards. */
export function CandidatesView({
  search,
  quantities,
}: {
  search: SearchView;
  quantities: readonly QuantityView[];
}) {
  const { id, specification, kept, counts, prices } = search;
  const { view, change } = useView();
  const narrow = useNarrow();
  const { data, error, refetch, fetchNextPage, hasNextPage, isFetching, isPlaceholderData } = useCandidates(
    id,
    view,
  );
  const rows = data?.pages.flatMap(({ items }) => items) ?? [];
  const columns = columnsOf(view.columns, specification, quantities);
  const currency = prices?.currency;
  const onEnd = () => void (hasNextPage && !isFetching && fetchNextPage());
  const { asked, others } = askedFirst(specification, quantities);
  const filtered = isFiltered(view.filters);
  const shared = {
    searchId: id,
    rows,
    columns,
    currency,
    shareDecimals: shareDecimals(specification.fractions),
    onEnd,
  };

  return (
    <section className="look" aria-labelledby="candidates-head">
      <h2 id="candidates-head">Candidates</h2>
      <FilterBar
        searchId={id}
        filters={view.filters}
        pool={effectivePool(specification.elements)}
        quantities={[...asked, ...others]}
        currency={currency}
        among={`among the ${formatCount(kept)} kept${counts.passed === null ? '' : ` of ${formatCount(counts.passed)} that passed`}`}
        onChange={(filters) => change({ filters })}
      />
      <div className="look-tools">
        {narrow ? <OrderChoice view={view} quantities={quantities} onChange={change} /> : null}
        <RowChoice at={view.at} kept={kept} onChange={(at) => change({ at })} />
        <ExportLinks searchId={id} view={view} />
        <ColumnChoice
          quantities={quantities}
          shown={columns}
          onChange={(chosen) => change({ columns: chosen })}
        />
      </div>
      {error ? <Failed error={error} what="The candidates" onRetry={() => void refetch()} /> : null}
      {!data && !error ? <Waiting what="Fetching the candidates" /> : null}
      {data && rows.length === 0 ? (
        <p className="note">
          {filtered ? 'None of the kept candidates meets these filters. ' : 'There is no row here. '}
          <button type="button" onClick={() => change({ filters: noFilters, at: 0 })}>
            Show all that were kept
          </button>
        </p>
      ) : null}
      {rows.length > 0 ? (
        <div className={isPlaceholderData ? 'look-stale' : undefined} aria-busy={isPlaceholderData}>
          {narrow ? (
            <CandidateCards {...shared} />
          ) : (
            <CandidateTable
              {...shared}
              selection={`${selectionOf(view)} ${view.at}`}
              firstRow={view.at}
              total={filtered ? null : kept}
              components={specification.components.max}
              order={view.order}
              direction={view.direction}
              onOrder={(order, direction) => change({ order, direction })}
            />
          )}
        </div>
      ) : null}
    </section>
  );
}
