import { queryOptions } from '@tanstack/react-query';
import type { ChargeSheet } from '@tiegel/charge';
import { request } from '../server/request.ts';

/** A charge sheet as the server keeps it. */
export interface SavedSheet extends ChargeSheet {
  number: string;
  savedAt: string;
  name: string;
  dataVersion: string;
  prices: { currency: string; date: string; invented: boolean } | null;
}

/** A line of the list of saved sheets. */
export type SheetSummary = Pick<
  SavedSheet,
  'number' | 'savedAt' | 'name' | 'composition' | 'mass' | 'cost' | 'currency'
>;

export const sheetsQuery = queryOptions({
  queryKey: ['charge-sheets'],
  queryFn: ({ signal }) => request<SheetSummary[]>('/charge-sheets', { signal }),
  staleTime: 0,
});

/** A saved sheet is never changed. */
export const sheetQuery = (number: string) =>
  queryOptions({
    queryKey: ['charge-sheet', number],
    queryFn: ({ signal }) => request<SavedSheet>(`/charge-sheets/${encodeURIComponent(number)}`, { signal }),
    staleTime: Number.POSITIVE_INFINITY,
  });
