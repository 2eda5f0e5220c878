import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useRef } from 'react';
import { useLocation } from 'wouter';
import { randomKey } from '../server/randomKey.ts';
import { post } from '../server/request.ts';

/** Starts a search and goes to its page. The same specification sent again after a lost answer starts no second search. */
export function useStart(specification: unknown) {
  const client = useQueryClient();
  const [, navigate] = useLocation();
  const sent = useRef({ text: '', key: '' });
  return useMutation({
    mutationFn: () => {
      const text = JSON.stringify(specification);
      if (sent.current.text !== text) sent.current = { text, key: randomKey() };
      return post<{ id: string }>('/searches', specification, {
        headers: { 'idempotency-key': sent.current.key },
      });
    },
    onSuccess: ({ id }) => {
      sent.current = { text: '', key: '' };
      void client.invalidateQueries({ queryKey: ['searches'] });
      navigate(`/searches/${id}`);
    },
  });
}
