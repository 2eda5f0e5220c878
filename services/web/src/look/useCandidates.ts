import { keepPreviousData, useInfiniteQuery } from '@tanstack/react-query';
import type { CandidatePage } from '@tiegel/contract';
import { request } from '../server/request.ts';
import { selectionOf, type ViewState } from './viewState.ts';

const rowsPerPage = 200;

/** The kept candidates of a view, page after page by key, from row `at` on. */
export function useCandidates(id: string, view: ViewState) {
  const selection = selectionOf(view).toString();
  return useInfiniteQuery({
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
}
