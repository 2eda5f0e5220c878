import { useQueryClient } from '@tanstack/react-query';
import { useEffect, useRef, useState } from 'react';
import { useLocation, useSearch } from 'wouter';
import { readFilters } from '../look/filters.ts';
import { searchQuery } from '../server/queries.ts';
import type { Draft } from './draft.ts';
import { draftOf } from './draftOf.ts';
import { withFilters } from './withFilters.ts';

/**
 * Takes the address's word for where to begin: /ask?from=SEARCH&max.density=7.5 fills the form
 * with that search and the filters as limits, once, then drops them from the address.
 */
export function useStartingPoint(replace: (draft: Draft) => void): { loading: boolean; error: unknown } {
  const address = useSearch();
  const [, navigate] = useLocation();
  const client = useQueryClient();
  const [error, setError] = useState<unknown>(null);
  const from = new URLSearchParams(address).get('from');
  const take = useRef(replace);
  take.current = replace;

  useEffect(() => {
    if (from === null) return;
    let current = true;
    client.ensureQueryData(searchQuery(from)).then(
      ({ specification }) => {
        if (!current) return;
        take.current(withFilters(draftOf(specification), readFilters(new URLSearchParams(address))));
        navigate('/ask', { replace: true });
      },
      (reason: unknown) => current && setError(reason),
    );
    return () => {
      current = false;
    };
  }, [address, client, from, navigate]);

  return { loading: from !== null && error === null, error };
}
