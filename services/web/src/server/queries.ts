import {
  keepPreviousData,
  MutationCache,
  QueryCache,
  QueryClient,
  queryOptions,
} from '@tanstack/react-query';
import type {
  AccessView,
  Candidate,
  Distributions,
  HealthView,
  LateQuantityView,
  PairView,
  QuantityView,
  SearchView,
  Size,
} from '@tiegel/contract';
import { answerInLocale } from '../numbers/inLocale.ts';
import { keepUnanswered } from './keepUnanswered.ts';
import { NoAnswer, post, request, ServerProblem } from './request.ts';
import type { Demonstration, ElementView, PricesView } from './types.ts';

/** While no answer comes, every question that is on the page is asked again this often (ms). */
const askAgain = 3000;

/** ms that a question may take whose answer is quick; longer, and the server is taken to be out of reach */
const patience = 15_000;

/** `usual` ms between two askings (false: never again), sooner while no answer comes. */
export function interval(usual: number | false, error: Error | null): number | false {
  return error instanceof NoAnswer ? askAgain : usual;
}

/**
 * Asks again only where no answer came; a refusal stays a refusal. Where one is missing, the banner hears of it at
 * once; where a token is missing or has ended, the frame does, which asks for one (access/).
 */
export function makeQueryClient(): QueryClient {
  const onError = (error: Error, query?: { queryKey?: readonly unknown[] }) => {
    if (error instanceof NoAnswer && query?.queryKey?.[0] !== 'health') {
      void client.invalidateQueries({ queryKey: healthQuery.queryKey });
    }
    if (error instanceof ServerProblem && error.status === 401) {
      void client.invalidateQueries({ queryKey: accessQuery.queryKey });
    }
  };
  const client = new QueryClient({
    queryCache: new QueryCache({ onError }),
    mutationCache: new MutationCache({ onError: (error) => onError(error) }),
    defaultOptions: {
      queries: {
        // The server usually runs on this computer: being offline says nothing about reaching it.
        networkMode: 'always',
        retry: false,
        refetchInterval: ({ state }) => interval(false, state.error),
        staleTime: 60_000,
        refetchOnWindowFocus: false,
      },
      mutations: { networkMode: 'always' },
    },
  });
  keepUnanswered(client.getQueryCache());
  return client;
}

export const elementsQuery = queryOptions({
  queryKey: ['elements'],
  queryFn: ({ signal }) => request<ElementView[]>('/elements', { signal }),
});

export const quantitiesQuery = queryOptions({
  queryKey: ['quantities'],
  queryFn: async ({ signal }) => answerInLocale(await request<QuantityView[]>('/quantities', { signal })),
  staleTime: Number.POSITIVE_INFINITY,
});

export const lateQuantitiesQuery = queryOptions({
  queryKey: ['late-quantities'],
  queryFn: async ({ signal }) =>
    answerInLocale(await request<LateQuantityView[]>('/late-quantities', { signal })),
  staleTime: Number.POSITIVE_INFINITY,
});

export const pairsQuery = queryOptions({
  queryKey: ['pairs'],
  queryFn: ({ signal }) => request<PairView[]>('/pairs', { signal }),
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
  queryFn: ({ signal }) => request<HealthView>('/health', { signal, patience }),
  refetchInterval: ({ state }) => interval(20_000, state.error),
  refetchOnWindowFocus: true,
});

/** Whether the server asks for a token, and whose this browser shows; asked again when a request is refused for want of one. */
export const accessQuery = queryOptions({
  queryKey: ['access'],
  queryFn: ({ signal }) => request<AccessView>('/access', { signal }),
  staleTime: Number.POSITIVE_INFINITY,
});

/** Systems, points and time of a specification; the answer to the one before stays until this one is there. */
export const sizeQuery = (specification: unknown, enabled: boolean) =>
  queryOptions({
    queryKey: ['size', JSON.stringify(specification)],
    queryFn: ({ signal }) => post<Size>('/count', specification, { signal, patience }),
    placeholderData: keepPreviousData,
    enabled,
    gcTime: 30_000,
  });

/** Values of a sample of a specification's space; `question` is the body as JSON. */
export const distributionsQuery = (question: string, enabled: boolean) =>
  queryOptions({
    queryKey: ['distributions', question],
    queryFn: ({ signal }) =>
      request<Distributions>('/distributions', { method: 'POST', body: question, signal }),
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
  refetchInterval: ({ state }) => interval(state.data?.some(isUnfinished) ? 2000 : 15_000, state.error),
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
