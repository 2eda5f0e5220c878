import { useQuery, useQueryClient } from '@tanstack/react-query';
import type { Shortlist, ShortlistAct, ShortlistChange } from '@tiegel/contract';
import { shortlistOf } from '@tiegel/contract/terms';
import { useEffect, useState, useSyncExternalStore } from 'react';
import { onSharedText } from '../frame/sharedText.ts';
import { randomKey } from '../server/randomKey.ts';
import { NoAnswer, request } from '../server/request.ts';
import { addPending, pendingChanges, settle } from './pendingChanges.ts';
import { usePerson } from './person.ts';
import { type ShortlistWithHistory, shortlistQuery } from './shortlistQueries.ts';

/** A shortlist as this browser sees it: what the server has, and on top what was not sent yet. */
export interface ShortlistState {
  list: Shortlist | undefined;
  /** how many changes the server does not have yet */
  unsent: number;
  /** why the list cannot be read, or the last change was refused */
  error: Error | null;
  refused: Error | null;
  act(...acts: readonly ShortlistAct[]): void;
  retry(): void;
}

export function useShortlist(id: string): ShortlistState {
  const [by] = usePerson();
  const { data, error, refetch } = useQuery(shortlistQuery(id));
  const pending = useSyncExternalStore(onSharedText, () => pendingChanges(id));
  const refused = useSending(id, pending, data);
  return {
    list: data && merged(data, pending),
    ...{ unsent: pending.length, error, refused },
    act(...acts) {
      const seen = data?.sequence ?? 0;
      addPending(
        id,
        acts.map((act) => ({ key: randomKey(), by, seen, act })),
      );
    },
    retry: () => void refetch(),
  };
}

/** Sends what is pending, in order; what is refused goes and is told, what got no answer is sent again. */
function useSending(
  id: string,
  pending: readonly ShortlistChange[],
  data: ShortlistWithHistory | undefined,
): Error | null {
  const client = useQueryClient();
  const [refused, setRefused] = useState<Error | null>(null);
  // Each answer of the server (every few seconds) is an occasion to try again.
  const occasion = data?.sequence;
  const [failures, setFailures] = useState(0);
  // biome-ignore lint/correctness/useExhaustiveDependencies: occasion and failures are reasons to send again
  useEffect(() => {
    if (pending.length === 0) return;
    const stop = new AbortController();
    const keys = new Set(pending.map(({ key }) => key));
    const send = async () => {
      try {
        const body = JSON.stringify({ changes: pending });
        await request<Shortlist>(`/shortlists/${id}`, { method: 'PATCH', body, signal: stop.signal });
        setRefused(null);
        await client.invalidateQueries({ queryKey: ['shortlists', id] });
        settle(id, keys);
      } catch (error) {
        if (stop.signal.aborted) return;
        if (error instanceof NoAnswer) {
          setTimeout(() => setFailures((count) => count + 1), sendAgain);
          return;
        }
        setRefused(error as Error);
        settle(id, keys);
      }
    };
    void send();
    return () => stop.abort();
  }, [id, pending, occasion, failures, client]);
  return refused;
}

/** ms until what got no answer is sent again */
const sendAgain = 2000;

function merged(data: ShortlistWithHistory, pending: readonly ShortlistChange[]): Shortlist {
  const taken = new Set(data.history.map(({ key }) => key));
  const at = new Date().toISOString();
  const own = pending
    .filter(({ key }) => !taken.has(key))
    .map((change, place) => ({ ...change, at, sequence: data.sequence + 1 + place }));
  return shortlistOf(data, [...data.history, ...own]);
}
