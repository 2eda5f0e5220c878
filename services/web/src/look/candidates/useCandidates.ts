import { keepPreviousData, useInfiniteQuery } from '@tanstack/react-query';
import type { CandidatePage } from '@tiegel/contract';
import { useCallback, useMemo } from 'react';
import { useLast } from '../../frame/useLast.ts';
import { request } from '../../server/request.ts';
import { selectionOf, type ViewState } from '../viewState.ts';

const rowsPerPage = 200;

/** The kept candidates of a view, page after page by key, from row `at` on; `onEnd` asks for the next page. */
export function useCandidates(id: string, view: Pick<ViewState, 'filters' | 'order' | 'direction' | 'at'>) {
  const selection = selectionOf(view).toString();
  const query = useInfiniteQuery({
    queryKey: ['candidates', id, selection, view.at],
    initialPageParam: view.at > 0 ? `at=${view.at}` : '',
    queryFn: ({ pageParam, signal }) =>
      request<CandidatePage>(
        `/searches/${encodeURIComponent(id)}/candidates?${[selection, `limit=${rowsPerPage}`, pageParam].filter(Boolean).join('&')}`,
        { signal },
      ),
    getNextPageParam: ({ next }) => (next === null ? null : `after=${encodeURIComponent(next)}`),
    placeholderData: keepPreviousData,
    staleTime: Number.POSITIVE_INFINITY,
  });
  const { data, error, refetch, fetchNextPage, hasNextPage, isFetching, isPlaceholderData, isPending } =
    query;
  const last = useLast(data);
  const rows = useMemo(() => last.value?.pages.flatMap(({ items }) => items) ?? [], [last.value]);
  const onEnd = useCallback(() => {
    if (hasNextPage && !isFetching) void fetchNextPage();
  }, [hasNextPage, isFetching, fetchNextPage]);
  const isStale = last.stale || isPlaceholderData;
  return { rows, error, refetch, isStale, isFetching, isPending, onEnd };
}
