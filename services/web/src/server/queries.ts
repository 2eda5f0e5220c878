import { keepPreviousData, QueryClient, queryOptions } from '@tanstack/react-query';
import type { Candidate, SearchView, Size } from '@tiegel/contract';
import type { PairRecord } from '@tiegel/elements';
import { NoAnswer, post, request } from './request.ts';
import type { Demonstration, ElementView, Health, PricesView, QuantityView } from './types.ts';

/** Asks again only where no answer came; a refusal stays a refusal. */
export function makeQueryClient(): QueryClient {
  return new QueryClient({
    defaultOptions: {
      queries: {
        // The server usually runs on this computer: being offline says nothing about reaching it.
        networkMode: 'always',
        retry: (failures, error) => error instanceof NoAnswer && failures < 2,
        retryDelay: 1000,
        staleTime: 60_000,
        refetchOnWindowFocus: false,
      },
      mutations: { networkMode: 'always' },
    },
  });
}

export const elementsQuery = queryOptions({
  queryKey: ['elements'],
  queryFn: ({ signal }) => request<ElementView[]>('/elements', { signal }),
});

export const quantitiesQuery = queryOptions({
  queryKey: ['quantities'],
  queryFn: ({ signal }) => request<QuantityView[]>('/quantities', { signal }),
  staleTime: Number.POSITIVE_INFINITY,
});

export const pairsQuery = queryOptions({
  queryKey: ['pairs'],
  queryFn: ({ signal }) => request<PairRecord[]>('/pairs', { signal }),
  staleTime: Number.POSITIVE_INFINITY,
});

export const pricesQuery = queryOptions({
  queryKey: ['prices'],
  queryFn: ({ signal }) => request<PricesView>('/prices', { signal }),
});

export const demonstrationQuery = queryOptions({
  queryKey: ['demonstration'],
  queryFn: ({ signal }) => request<Demonstration>('/demonstration', { signal }),
  staleTime: Number.POSITIVE_INFINITY,
});

export const healthQuery = queryOptions({
  queryKey: ['health'],
  queryFn: ({ signal }) => request<Health>('/health', { signal }),
  retry: false,
  refetchInterval: (query) => (query.state.error ? 3000 : 20_000),
  refetchOnWindowFocus: true,
});

/** Systems, points and time of a specification; the answer to the one before stays until this one is there. */
export const sizeQuery = (specification: unknown, enabled: boolean) =>
  queryOptions({
    queryKey: ['size', JSON.stringify(specification)],
    queryFn: ({ signal }) => post<Size>('/count', specification, { signal }),
    placeholderData: keepPreviousData,
    enabled,
    gcTime: 30_000,
  });

const unfinished = new Set(['waiting', 'running', 'paused']);

export function isUnfinished(search: SearchView): boolean {
  return unfinished.has(search.state);
}

export const searchesQuery = queryOptions({
  queryKey: ['searches'],
  queryFn: ({ signal }) => request<SearchView[]>('/searches', { signal }),
  staleTime: 0,
  refetchInterval: (query) => (query.state.data?.some(isUnfinished) ? 2000 : 15_000),
});

export const searchKey = (id: string) => ['search', id];

export const searchQuery = (id: string) =>
  queryOptions({
    queryKey: searchKey(id),
    queryFn: ({ signal }) => request<SearchView>(`/searches/${encodeURIComponent(id)}`, { signal }),
    staleTime: 5000,
  });

export const candidateQuery = (id: string, composition: string) =>
  queryOptions({
    queryKey: ['candidate', id, composition],
    queryFn: ({ signal }) =>
      request<Candidate>(
        `/searches/${encodeURIComponent(id)}/candidates/${encodeURIComponent(composition)}`,
        { signal },
      ),
    staleTime: Number.POSITIVE_INFINITY,
  });
