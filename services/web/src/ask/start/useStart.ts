import { useMutation, useQueryClient } from '@tanstack/react-query';
import type { Schedule } from '@tiegel/contract';
import { useLocation } from 'wouter';
import { post } from '../../server/request.ts';
import { forgetSent, sentKey } from '../../server/sentKey.ts';

/**
 * Starts a search with its hours and priority and goes to its page. The same question sent again after
 * a lost answer starts no second search.
 */
export function useStart(specification: unknown, schedule: Schedule) {
  const client = useQueryClient();
  const [, navigate] = useLocation();
  return useMutation({
    mutationFn: () => {
      const key = sentKey('sessionStorage', 'ask', JSON.stringify([specification, schedule]));
      return post<{ id: string }>(`/searches${queryOf(schedule)}`, specification, {
        headers: { 'idempotency-key': key },
      });
    },
    onSuccess: ({ id }) => {
      forgetSent('sessionStorage', 'ask');
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
