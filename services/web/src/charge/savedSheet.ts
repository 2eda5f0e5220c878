import { queryOptions } from '@tanstack/react-query';
import type { ChargeSheet } from '@tiegel/charge';
import type { ChargeSheetSummary, SavedChargeSheetView } from '@tiegel/contract';
import { request } from '../server/request.ts';

/** A charge sheet as the server keeps it: one that packages/charge made, and what is known beside it. */
export type SavedSheet = ChargeSheet & Omit<SavedChargeSheetView, keyof ChargeSheet>;

export const sheetsQuery = queryOptions({
  queryKey: ['charge-sheets'],
  queryFn: ({ signal }) => request<ChargeSheetSummary[]>('/charge-sheets', { signal }),
  staleTime: 0,
});

/** A saved sheet is never changed. */
export const sheetQuery = (number: string) =>
  queryOptions({
    queryKey: ['charge-sheet', number],
    queryFn: ({ signal }) => request<SavedSheet>(`/charge-sheets/${encodeURIComponent(number)}`, { signal }),
    staleTime: Number.POSITIVE_INFINITY,
  });
