import { useQueryClient } from '@tanstack/react-query';
import { useEffect, useRef, useState } from 'react';
import { useLocation, useSearch } from 'wouter';
import { readFilters } from '../../look/filters/filters.ts';
import { searchQuery } from '../../server/queries.ts';
import { neighbourhood } from '../begin/neighbourhood.ts';
import type { Draft } from './draft.ts';
import { draftOf } from './draftOf.ts';
import { withFilters } from './withFilters.ts';

/** at.% by which shares may differ where an address names no more than an alloy. */
const usualReach = 5;

/**
 * Takes the address's word for where to begin: /ask?from=SEARCH&max.density=7.5 fills the form
 * with that search and the filters as limits, /ask?like=CoCrFeMnNi elements and shares with the
 * neighbourhood of that alloy; once, then drops them from the address.
 */
export function useStartingPoint(
  draft: Draft,
  replace: (draft: Draft) => void,
): { loading: boolean; error: unknown } {
  const address = useSearch();
  const [, navigate] = useLocation();
  const client = useQueryClient();
  const [error, setError] = useState<unknown>(null);
  const from = new URLSearchParams(address).get('from');
  const like = new URLSearchParams(address).get('like');
  const take = useRef(replace);
  take.current = replace;
  const before = useRef(draft);
  before.current = draft;

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

  useEffect(() => {
    if (like === null || from !== null) return;
    let current = true;
    void import('../../alloy/entry/readAlloyText.ts').then(({ readAlloyText }) => {
      if (!current) return;
      const { composition, faults } = readAlloyText(like);
      if (faults) setError(new Error(faults.map(({ detail, remedy }) => `${detail} ${remedy}`).join(' ')));
      else
        take.current({
          ...before.current,
          ...neighbourhood({ composition, within: usualReach, partners: [] }),
        });
      navigate('/ask', { replace: true });
    });
    return () => {
      current = false;
    };
  }, [like, from, navigate]);

  return { loading: from !== null && error === null, error };
}
