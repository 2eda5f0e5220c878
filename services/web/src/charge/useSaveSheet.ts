import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useRef } from 'react';
import { useLocation } from 'wouter';
import { randomKey } from '../server/randomKey.ts';
import { post } from '../server/request.ts';
import type { ChargeBody } from './chargeOf.ts';
import type { SavedSheet } from './savedSheet.ts';

/** Keeps a sheet under a number and goes to it. The same one sent again after a lost answer is kept once. */
export function useSaveSheet(body: ChargeBody) {
  const client = useQueryClient();
  const [, navigate] = useLocation();
  const sent = useRef({ text: '', key: '' });
  return useMutation({
    mutationFn: () => {
      const text = JSON.stringify(body);
      if (sent.current.text !== text) sent.current = { text, key: randomKey() };
      return post<SavedSheet>('/charge-sheets', body, { headers: { 'idempotency-key': sent.current.key } });
    },
    onSuccess: (saved) => {
      sent.current = { text: '', key: '' };
      client.setQueryData(['charge-sheet', saved.number], saved);
      void client.invalidateQueries({ queryKey: ['charge-sheets'] });
      navigate(`/charge-sheets/${saved.number}`);
    },
  });
}
