import { keepPreviousData, useInfiniteQuery } from '@tanstack/react-query';
import type { KnownAlloysView } from '@tiegel/contract';
import { useCallback, useMemo } from 'react';
import { useLast } from '../../frame/useLast.ts';
import { request } from '../../server/request.ts';
import type { Direction } from '../table/tableColumn.ts';

const rowsPerPage = 200;

/**
 * The published alloys of a selection, page after page, in the order of a column ('' for own ones first); `onEnd`
 * asks for the next page.
 */
export function useAlloys(selection: string, order: string, direction: Direction) {
  const ordered = order === '' ? '' : `order=${order}&direction=${direction}`;
  const query = useInfiniteQuery({
    queryKey: ['published-alloys', selection, ordered],
    initialPageParam: 0,
    queryFn: ({ pageParam, signal }) =>
      request<KnownAlloysView>(
        `/published-alloys?${[selection, ordered, `limit=${rowsPerPage}`, `at=${pageParam}`].filter(Boolean).join('&')}`,
        { signal },
      ),
    getNextPageParam: ({ total }, pages) => {
      const there = pages.reduce((sum, { items }) => sum + items.length, 0);
      return there < total && pages.at(-1)!.items.length > 0 ? there : null;
    },
    placeholderData: keepPreviousData,
  });
  const { data, error, refetch, fetchNextPage, hasNextPage, isFetching, isPlaceholderData } = query;
  const last = useLast(data);
  const rows = useMemo(() => last.value?.pages.flatMap(({ items }) => items), [last.value]);
  const onEnd = useCallback(() => {
    if (hasNextPage && !isFetching) void fetchNextPage();
  }, [hasNextPage, isFetching, fetchNextPage]);
  const total = last.value?.pages[0]?.total ?? 0;
  return { rows, total, error, refetch, stale: last.stale || isPlaceholderData, onEnd };
}
