import { queryOptions } from '@tanstack/react-query';
import type { Shortlist, TakenChange } from '@tiegel/contract';
import { interval } from '../server/queries.ts';
import { request } from '../server/request.ts';

/** What others do shows after so long, ms. */
const lookAgain = 3000;

export type ShortlistWithHistory = Shortlist & { history: TakenChange[] };

export const shortlistsQuery = queryOptions({
  queryKey: ['shortlists'],
  queryFn: async ({ signal }) => (await request<{ items: Shortlist[] }>('/shortlists', { signal })).items,
  staleTime: 0,
});

export const shortlistQuery = (id: string) =>
  queryOptions({
    queryKey: ['shortlists', id],
    queryFn: ({ signal }) => request<ShortlistWithHistory>(`/shortlists/${id}`, { signal }),
    staleTime: 0,
    refetchInterval: ({ state }) => interval(lookAgain, state.error),
  });
