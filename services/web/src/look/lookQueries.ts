import { keepPreviousData, queryOptions } from '@tanstack/react-query';
import type {
  CandidatePage,
  CandidateValues,
  ElementUse,
  OrdersView,
  PublishedOver,
  SearchDistributions,
  SystemsPage,
  TradeOff,
} from '@tiegel/contract';
import { request } from '../server/request.ts';
import { type Filters, writeFilters } from './filters/filters.ts';
import type { Wish } from './scatter/plotState.ts';

/** More points than these are sampled by the server: they make no other picture. */
const mostPoints = 100_000;

/** What is kept never changes, so that an answer stays good; while another is fetched the last one is shown. */
const settled = { staleTime: Number.POSITIVE_INFINITY, placeholderData: keepPreviousData } as const;

function address(id: string, what: string, filters: Filters, more: Record<string, string | undefined> = {}) {
  const search = writeFilters(new URLSearchParams(), filters);
  for (const [key, value] of Object.entries(more)) if (value !== undefined) search.set(key, value);
  return `/searches/${encodeURIComponent(id)}/${what}?${search}`;
}

export const valuesQuery = (
  id: string,
  filters: Filters,
  quantities: readonly string[],
  limit = mostPoints,
) => {
  const path = address(id, 'values', filters, {
    ...(quantities.length > 0 ? { quantities: quantities.join(',') } : {}),
    limit: String(limit),
  });
  return queryOptions({
    queryKey: ['values', path],
    queryFn: ({ signal }) => request<CandidateValues>(path, { signal }),
    ...settled,
  });
};

export const distributionsQuery = (id: string, filters: Filters, quantities: readonly string[]) => {
  const path = address(id, 'distributions', filters, { quantities: quantities.join(',') });
  return queryOptions({
    queryKey: ['distributions', path],
    queryFn: ({ signal }) => request<SearchDistributions>(path, { signal }),
    ...settled,
  });
};

export const elementUseQuery = (id: string, filters: Filters) => {
  const path = address(id, 'element-use', filters);
  return queryOptions({
    queryKey: ['element-use', path],
    queryFn: ({ signal }) => request<ElementUse>(path, { signal }),
    ...settled,
  });
};

export const tradeOffQuery = (
  id: string,
  filters: Filters,
  [first, second]: readonly [string, string],
  wishes: readonly [Wish, Wish],
) => {
  const [preferFirst, preferSecond] = wishes;
  const path = address(id, 'trade-off', filters, { first, second, preferFirst, preferSecond });
  return queryOptions({
    queryKey: ['trade-off', path],
    queryFn: ({ signal }) => request<TradeOff>(path, { signal }),
    ...settled,
    // Without a better side of both there is no front.
    enabled: !wishes.includes('none'),
  });
};

export const publishedQuery = (id: string, quantities: readonly string[]) => {
  const path = `/searches/${encodeURIComponent(id)}/published?quantities=${quantities.join(',')}`;
  return queryOptions({
    queryKey: ['published', path],
    queryFn: ({ signal }) => request<PublishedOver>(path, { signal }),
    ...settled,
    // A melt may have been recorded since.
    staleTime: 10_000,
  });
};

const systemsOnPage = 100;

export function systemsPage(
  id: string,
  filters: Filters,
  explored: 'yes' | 'no' | undefined,
  at: number,
  signal?: AbortSignal,
): Promise<SystemsPage> {
  const more = { explored, limit: String(systemsOnPage), ...(at > 0 ? { at: String(at) } : {}) };
  return request(address(id, 'systems', filters, more), { signal });
}

/** The candidate of a rank, for a point that somebody reads. */
export const candidateOfRankQuery = (id: string, rank: number) =>
  queryOptions({
    queryKey: ['candidate of rank', id, rank],
    queryFn: async ({ signal }) => {
      const path = `/searches/${encodeURIComponent(id)}/candidates?at=${rank - 1}&limit=1`;
      const { items } = await request<CandidatePage>(path, { signal });
      return items[0] ?? null;
    },
    staleTime: Number.POSITIVE_INFINITY,
  });

/** Orders that the server is making, with the share that is done; asked again and again while somebody waits for one. */
export const ordersQuery = (id: string, enabled: boolean) =>
  queryOptions({
    queryKey: ['orders', id],
    queryFn: ({ signal }) => request<OrdersView>(`/searches/${encodeURIComponent(id)}/orders`, { signal }),
    enabled,
    gcTime: 0,
    staleTime: 0,
    refetchInterval: 300,
  });
