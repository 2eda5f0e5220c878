import { useMutation, useQueryClient } from '@tanstack/react-query';
import type { Schedule } from '@tiegel/contract';
import { useRef } from 'react';
import { useLocation } from 'wouter';
import { randomKey } from '../server/randomKey.ts';
import { post } from '../server/request.ts';

/**
 * Starts a search with its hours and priority and goes to its page. The same question sent again after
 * a lost answer starts no second search.
 */
export function useStart(specification: unknown, schedule: Schedule) {
  const client = useQueryClient();
  const [, navigate] = useLocation();
  const sent = useRef({ text: '', key: '' });
  return useMutation({
    mutationFn: () => {
      const text = JSON.stringify([specification, schedule]);
      if (sent.current.text !== text) sent.current = { text, key: randomKey() };
      return post<{ id: string }>(`/searches${queryOf(schedule)}`, specification, {
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

function queryOf({ hours, priority }: Schedule): string {
  const query = new URLSearchParams({
    ...(hours === null ? {} : { hours: `${hours.from}-${hours.to}`, zone: hours.zone }),
    ...(priority === 'usual' ? {} : { priority }),
  });
  return query.size === 0 ? '' : `?${query}`;
}
