import { queryOptions } from '@tanstack/react-query';
import type { MeltEntry } from '@tiegel/contract';
import { request } from '../server/request.ts';

/** A file of a melt. */
export interface AttachmentView {
  id: string;
  name: string;
  type: string;
  size: number;
  addedAt: string;
}

/** A melt as the server tells it. */
export interface MeltView extends MeltEntry {
  id: string;
  version: number;
  createdAt: string;
  changedAt: string;
  deletedAt: string | null;
  composition: Record<string, number>;
  nominal: Record<string, number> | null;
  system: string;
  label: string | null;
  phaseClass: 'fcc' | 'bcc' | 'both' | 'other' | null;
  singlePhase: boolean | null;
  attachments: AttachmentView[];
}

export interface MeltWithHistory extends MeltView {
  history: { version: number; at: string; entry: MeltEntry }[];
}

export const meltsQuery = queryOptions({
  queryKey: ['melts'],
  queryFn: async ({ signal }) => (await request<{ items: MeltView[] }>('/melts', { signal })).items,
  staleTime: 0,
});

export const meltKey = (id: string) => ['melt', id];

export const meltQuery = (id: string) =>
  queryOptions({
    queryKey: meltKey(id),
    queryFn: ({ signal }) => request<MeltWithHistory>(`/melts/${encodeURIComponent(id)}`, { signal }),
    staleTime: 0,
  });
