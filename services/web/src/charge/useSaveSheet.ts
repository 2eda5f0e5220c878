import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { useLocation } from 'wouter';
import { post } from '../server/request.ts';
import { forgetSent, sentKey, unansweredKey } from '../server/sentKey.ts';
import type { ChargeBody } from './chargeOf.ts';
import { isSheetOf } from './isSheetOf.ts';
import type { SavedSheet } from './savedSheet.ts';

const [storage, form] = ['localStorage', 'charge'] as const;

/**
 * Keeps a sheet under a number, once, and goes to it. Where the answer to an earlier press was lost and the form
 * was changed since, the server is asked by the key of that press: what it then kept is `before`, and a person says
 * whether that sheet will do or this one gets a number too.
 */
export function useSaveSheet(body: ChargeBody) {
  const client = useQueryClient();
  const [, navigate] = useLocation();
  const [before, setBefore] = useState<SavedSheet | null>(null);
  const saving = useMutation({
    mutationFn: async () => {
      const text = JSON.stringify(body);
      const lost = unansweredKey(storage, form, text);
      const key = lost ?? sentKey(storage, form, text);
      const saved = await post<SavedSheet>('/charge-sheets', body, { headers: { 'idempotency-key': key } });
      return { saved, isBefore: lost !== null && !isSheetOf(saved, body) };
    },
    onSuccess: ({ saved, isBefore }) => {
      forgetSent(storage, form);
      client.setQueryData(['charge-sheet', saved.number], saved);
      void client.invalidateQueries({ queryKey: ['charge-sheets'] });
      if (isBefore) setBefore(saved);
      else navigate(`/charge-sheets/${saved.number}`);
    },
  });
  return {
    saving,
    before,
    /** Keeps what stands in the form beside the sheet of before. */
    saveAnother() {
      setBefore(null);
      saving.mutate();
    },
  };
}
