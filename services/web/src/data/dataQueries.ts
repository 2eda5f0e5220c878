import type { DataVersions, ImportKind, ImportPreview, ImportVersion, KnownAlloyView, MaterialView, OwnColumnView } from '@tiegel/contract';
import { keepPreviousData, queryOptions } from '@tanstack/react-query';
import { request } from '../server/request.ts';

export const columnsQuery = queryOptions({
  queryKey: ['columns'],
  queryFn: ({ signal }) => request<OwnColumnView[]>('/columns', { signal }),
});

export const materialsQuery = queryOptions({
  queryKey: ['materials'],
  queryFn: async ({ signal }) => (await request<{ items: MaterialView[] }>('/materials', { signal })).items,
});

export const importsQuery = queryOptions({
  queryKey: ['imports'],
  queryFn: async ({ signal }) => (await request<{ items: ImportVersion[] }>('/imports', { signal })).items,
});

/** One import with its rows as CSV. */
export const importQuery = (number: string) =>
  queryOptions({
    queryKey: ['imports', number],
    queryFn: ({ signal }) =>
      request<ImportVersion & { csv: string }>(`/imports/${encodeURIComponent(number)}`, { signal }),
  });

/** What would become of each row of a text; the answer to the text before stays until this one is there. */
export const previewQuery = (kind: ImportKind, text: string) =>
  queryOptions({
    queryKey: ['import-preview', kind, text],
    queryFn: ({ signal }) =>
      request<ImportPreview>(`/imports/preview?kind=${kind}`, {
        method: 'POST',
        body: text,
        type: 'text/csv',
        signal,
      }),
    placeholderData: (before) => (before?.kind === kind ? before : undefined),
    enabled: text.trim() !== '',
    gcTime: 30_000,
  });

export const dataVersionsQuery = queryOptions({
  queryKey: ['data-versions'],
  queryFn: ({ signal }) => request<DataVersions>('/data-versions', { signal }),
  staleTime: 0,
});

/** How many published alloys there are in all, and how many are somebody's own. */
export const alloyCountQuery = (own: 'yes' | 'no') =>
  queryOptions({
    queryKey: ['published-alloys', 'count', own],
    queryFn: async ({ signal }) =>
      (
        await request<{ total: number; items: KnownAlloyView[] }>(
          `/published-alloys?limit=1&own=${own}`,
          { signal },
        )
      ).total,
    placeholderData: keepPreviousData,
  });
