import { useQuery, useQueryClient } from '@tanstack/react-query';
import type { SearchView } from '@tiegel/contract';
import { useEffect, useState } from 'react';
import { interval, isUnfinished, searchKey, searchQuery } from './queries.ts';
import { apiRoot } from './request.ts';

/**
 * A search that keeps itself current while it is unfinished: by server-sent events, or by asking
 * every two seconds for as long as no stream of events is open.
 */
export function useSearchView(id: string) {
  const client = useQueryClient();
  const [streaming, setStreaming] = useState(false);
  const query = useQuery({
    ...searchQuery(id),
    refetchInterval: ({ state }) =>
      interval(state.data && isUnfinished(state.data) && !streaming ? 2000 : false, state.error),
  });
  const live = query.data !== undefined && isUnfinished(query.data);

  useEffect(() => {
    if (!live) return;
    const events = new EventSource(`${apiRoot}/searches/${encodeURIComponent(id)}/events`);
    const take = (event: MessageEvent<string>) => {
      client.setQueryData<SearchView>(searchKey(id), JSON.parse(event.data) as SearchView);
    };
    events.addEventListener('open', () => setStreaming(true));
    events.addEventListener('error', () => setStreaming(false));
    events.addEventListener('search', take);
    return () => {
      events.close();
      setStreaming(false);
    };
  }, [client, id, live]);

  return query;
}
