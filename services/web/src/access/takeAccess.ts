import type { QueryClient } from '@tanstack/react-query';
import type { AccessView } from '@tiegel/contract';
import { accessQuery, healthQuery } from '../server/queries.ts';

/** Somebody else sits here now: what the one before was shown goes, and what was refused is asked anew. */
export function takeAccess(client: QueryClient, view: AccessView): void {
  const concernsNobody = new Set<unknown>([accessQuery.queryKey[0], healthQuery.queryKey[0]]);
  client.setQueryData(accessQuery.queryKey, view);
  client.removeQueries({ predicate: ({ queryKey }) => !concernsNobody.has(queryKey[0]) });
}
