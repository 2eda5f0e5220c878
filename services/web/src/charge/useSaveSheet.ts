import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { useLocation } from 'wouter';
import { postOnce } from '../server/postOnce.ts';
import { forgetSent } from '../server/sentKey.ts';
import type { ChargeBody } from './chargeOf.ts';
import { isSheetOf } from './isSheetOf.ts';
import type { SavedSheet } from './savedSheet.ts';

const [storage, form] = ['localStorage', 'charge'] as const;

/**
 * Keeps a sheet under a number, once (postOnce), and goes to it. What an earlier press without an answer had kept
 * is `before`, and a person says whether that sheet will do or this one gets a number too.
 */
export function useSaveSheet(body: ChargeBody) {
  const client = useQueryClient();
  const [, navigate] = useLocation();
  const [before, setBefore] = useState<SavedSheet | null>(null);
  const saving = useMutation({
    mutationFn: () =>
      postOnce<ChargeBody, SavedSheet>({ storage, form, path: '/charge-sheets', body, isOf: isSheetOf }),
    onSuccess: ({ kept, isBefore }) => {
      client.setQueryData(['charge-sheet', kept.number], kept);
      void client.invalidateQueries({ queryKey: ['charge-sheets'] });
      if (isBefore) return setBefore(kept);
      forgetSent(storage, form);
      navigate(`/charge-sheets/${kept.number}`);
    },
  });
  return {
    saving,
    before,
    /** Keeps what stands in the form beside the sheet of before. */
    saveAnother() {
      forgetSent(storage, form);
      setBefore(null);
      saving.mutate();
    },
  };
}
