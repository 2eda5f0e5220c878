import { type QueryClient, queryOptions } from '@tanstack/react-query';
import type { AccessView } from '@tiegel/contract';
import { healthQuery } from '../server/queries.ts';
import { request } from '../server/request.ts';

/** Whether the server asks for a token, and whose this browser shows; asked again when a request is refused for want of one. */
export const accessQuery = queryOptions({
  queryKey: ['access'],
  queryFn: ({ signal }) => request<AccessView>('/access', { signal }),
  staleTime: Number.POSITIVE_INFINITY,
});

/** Somebody else sits here now: what the one before was shown goes, and what was refused is asked anew. */
export function takeAccess(client: QueryClient, view: AccessView): void {
  const concernsNobody = new Set<unknown>([accessQuery.queryKey[0], healthQuery.queryKey[0]]);
  client.setQueryData(accessQuery.queryKey, view);
  client.removeQueries({ predicate: ({ queryKey }) => !concernsNobody.has(queryKey[0]) });
}
