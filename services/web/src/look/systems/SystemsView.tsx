import { keepPreviousData, useInfiniteQuery } from '@tanstack/react-query';
import { Failed } from '../../frame/Failed.tsx';
import { useLast } from '../../frame/useLast.ts';
import { useNarrow } from '../../frame/useNarrow.ts';
import { Waiting } from '../../frame/Waiting.tsx';
import { formatCount } from '../../numbers/formatNumber.ts';
import { askedFirst } from '../columns.ts';
import { writeFilters } from '../filters/filters.ts';
import { NothingMeets } from '../filters/NothingMeets.tsx';
import { systemsPage } from '../lookQueries.ts';
import type { LookProps } from '../lookView.ts';
import { PublishedNotKept } from './PublishedNotKept.tsx';
import { SystemCards } from './SystemCards.tsx';
import { SystemsExport } from './SystemsExport.tsx';
import { SystemTable } from './SystemTable.tsx';

const mostColumns = 4;

/**
 * The systems of the candidates by the best of each; as the unexplored, those of them without an alloy
 * in the table of published ones, without one that was brought in and without a melt.
 */
export function SystemsView(props: LookProps) {
  const { search, view, change } = props;
  const unexplored = view.show === 'unexplored';
  const narrow = useNarrow();
  const {
    data: latest,
    error,
    refetch,
    fetchNextPage,
    hasNextPage,
    isFetchingNextPage,
    isPlaceholderData,
  } = useInfiniteQuery({
    queryKey: [
      'systems',
      search.id,
      writeFilters(new URLSearchParams(), view.filters).toString(),
      unexplored,
    ],
    initialPageParam: 0,
    queryFn: ({ pageParam, signal }) =>
      systemsPage(search.id, view.filters, unexplored ? 'no' : undefined, pageParam, signal),
    getNextPageParam: ({ next }) => next,
    placeholderData: keepPreviousData,
    staleTime: Number.POSITIVE_INFINITY,
  });
  const last = useLast(latest);
  const data = last.value;
  const stale = last.stale || isPlaceholderData;
  if (error && !data) return <Failed error={error} what="The systems" onRetry={() => void refetch()} />;
  if (!data) return <Waiting what="Gathering systems" />;
  const [first] = data.pages;
  if (first!.meeting === 0) return <NothingMeets view={view} change={change} />;
  const { explored } = first!;
  const items = data.pages.flatMap((page) => page.items);
  const columns = askedFirst(search.specification, props.quantities).asked.slice(0, mostColumns);
  const Shown = narrow ? SystemCards : SystemTable;
  const shown = unexplored ? explored.kept - explored.keptExplored : explored.kept;
  return (
    <div className={stale ? 'look-stale column' : 'column'} aria-busy={stale}>
      <p className="read">
        {unexplored ? (
          <>
            <b>{formatCount(shown)}</b> of the {formatCount(explored.kept)} systems with kept candidates have
            neither an alloy in the table of published ones, nor one of yours, nor a melt recorded here.{' '}
            {explored.trust}
          </>
        ) : (
          <>
            The candidates lie in <b>{formatCount(explored.kept)}</b> of the {formatCount(explored.systems)}{' '}
            systems of this search; {formatCount(explored.keptPublished)} of these have alloys in the table of
            published ones. {explored.trust}
          </>
        )}
      </p>
      {items.length > 0 ? <SystemsExport search={search} view={view} count={shown} /> : null}
      {items.length > 0 ? (
        <Shown search={search} columns={columns} items={items} unexplored={unexplored} />
      ) : (
        <p className="note">
          Every system with a kept candidate has a published alloy, one of yours or a melt recorded here.
        </p>
      )}
      {error ? (
        <Failed
          error={error}
          what={stale ? 'The systems that are asked for' : 'The systems that follow'}
          onRetry={() => void (stale ? refetch() : fetchNextPage())}
        />
      ) : null}
      {hasNextPage ? (
        <p>
          <button type="button" disabled={isFetchingNextPage} onClick={() => void fetchNextPage()}>
            {isFetchingNextPage
              ? 'Fetching …'
              : `Show more: ${formatCount(items.length)} of ${formatCount(shown)} are here`}
          </button>
        </p>
      ) : null}
      {unexplored ? <PublishedNotKept explored={explored} /> : null}
    </div>
  );
}
