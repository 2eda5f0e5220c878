import { queryOptions } from '@tanstack/react-query';
import type { MeltsView, MeltWithHistory } from '@tiegel/contract';
import { request } from '../server/request.ts';

export const meltsQuery = queryOptions({
  queryKey: ['melts'],
  queryFn: async ({ signal }) => (await request<MeltsView>('/melts', { signal })).items,
  staleTime: 0,
});

export const meltKey = (id: string) => ['melt', id];

export const meltQuery = (id: string) =>
  queryOptions({
    queryKey: meltKey(id),
    queryFn: ({ signal }) => request<MeltWithHistory>(`/melts/${encodeURIComponent(id)}`, { signal }),
    staleTime: 0,
  });
