import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useLocation } from 'wouter';
import { post } from '../server/request.ts';
import { forgetSent, sentKey } from '../server/sentKey.ts';
import type { ChargeBody } from './chargeOf.ts';
import type { SavedSheet } from './savedSheet.ts';

/** Keeps a sheet under a number and goes to it. The same one sent again after a lost answer is kept once. */
export function useSaveSheet(body: ChargeBody) {
  const client = useQueryClient();
  const [, navigate] = useLocation();
  return useMutation({
    mutationFn: () => {
      const key = sentKey('localStorage', 'charge', JSON.stringify(body));
      return post<SavedSheet>('/charge-sheets', body, { headers: { 'idempotency-key': key } });
    },
    onSuccess: (saved) => {
      forgetSent('localStorage', 'charge');
      client.setQueryData(['charge-sheet', saved.number], saved);
      void client.invalidateQueries({ queryKey: ['charge-sheets'] });
      navigate(`/charge-sheets/${saved.number}`);
    },
  });
}
