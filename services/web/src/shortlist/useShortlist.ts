import { useQuery, useQueryClient } from '@tanstack/react-query';
import type { Shortlist, ShortlistAct, ShortlistChange } from '@tiegel/contract';
import { shortlistOf } from '@tiegel/contract/terms';
import { useEffect, useMemo, useState, useSyncExternalStore } from 'react';
import { onSharedText } from '../frame/sharedText.ts';
import { accessQuery } from '../server/queries.ts';
import { randomKey } from '../server/randomKey.ts';
import { NoAnswer, request, ServerProblem } from '../server/request.ts';
import { addPending, pendingChanges, settle } from './pendingChanges.ts';
import { usePerson } from './person.ts';
import { type ShortlistWithHistory, shortlistQuery } from './shortlistQueries.ts';

/** A shortlist as this browser sees it: what the server has, and on top what was not sent yet. */
export interface ShortlistState {
  list: Shortlist | undefined;
  /** how many changes the server does not have yet */
  unsent: number;
  /** who wrote changes here that wait until they sign in again */
  awaited: readonly string[];
  /** why the list cannot be read */
  error: Error | null;
  /** why the server cannot take changes now: they are kept, and sent again */
  hindered: Error | null;
  /** why it refused a change, which is gone */
  refused: Error | null;
  act(...acts: readonly ShortlistAct[]): void;
  retry(): void;
}

export function useShortlist(id: string): ShortlistState {
  const [by, setName] = usePerson();
  const { data, error, refetch } = useQuery(shortlistQuery(id));
  const pending = useSyncExternalStore(onSharedText, () => pendingChanges(id));
  const isSignedIn = setName === null;
  // Whoever sends a change under a token is told to have written it: those of another wait for that person.
  const own = useMemo(
    () => (isSignedIn ? pending.filter((one) => one.by === by) : pending),
    [isSignedIn, pending, by],
  );
  const awaited = [...new Set(pending.filter((one) => !own.includes(one)).map((one) => one.by))];
  const sending = useSending(id, own, data);
  return {
    list: data && merged(data, pending),
    ...{ unsent: own.length, awaited, error, ...sending },
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

/** What became of sending: why the server cannot take changes now, and what it refused for good. */
type Sending = Pick<ShortlistState, 'hindered' | 'refused'>;

/**
 * Sends what is pending, in order. What got no answer, met a fault of the server, or found nobody signed in, is sent
 * again. The server takes all changes of a request or none: once it refuses several they go one by one, so that only what is wrong goes.
 */
function useSending(
  id: string,
  pending: readonly ShortlistChange[],
  data: ShortlistWithHistory | undefined,
): Sending {
  const client = useQueryClient();
  const [{ hindered, refused }, setSending] = useState<Sending>({ hindered: null, refused: null });
  const [atOnce, setAtOnce] = useState(mostAtOnce);
  // Each answer of the server (every few seconds) is an occasion to try again.
  const occasion = data?.sequence;
  const [failures, setFailures] = useState(0);
  // biome-ignore lint/correctness/useExhaustiveDependencies: occasion and failures are reasons to send again
  useEffect(() => {
    if (pending.length === 0) return setAtOnce(mostAtOnce);
    const stop = new AbortController();
    let again: ReturnType<typeof setTimeout> | undefined;
    const changes = pending.slice(0, atOnce);
    const keys = new Set(changes.map(({ key }) => key));
    const send = async () => {
      try {
        const body = JSON.stringify({ changes });
        await request<Shortlist>(`/shortlists/${id}`, { method: 'PATCH', body, signal: stop.signal });
        // What was refused stays said for as long as what was sent with it is under way.
        setSending((before) => ({ hindered: null, refused: atOnce === 1 ? before.refused : null }));
        await client.invalidateQueries({ queryKey: ['shortlists', id] });
        settle(id, keys);
      } catch (error) {
        if (stop.signal.aborted) return;
        const asksWho = error instanceof ServerProblem && error.status === 401;
        // Who is signed out meant it all the same: it goes out once they have signed in again.
        if (asksWho) void client.invalidateQueries({ queryKey: accessQuery.queryKey });
        if (error instanceof ServerProblem && error.status < 500 && !asksWho) {
          if (changes.length > 1) return setAtOnce(1);
          setSending({ hindered: null, refused: error });
          return settle(id, keys);
        }
        setSending((before) => ({
          ...before,
          hindered: error instanceof NoAnswer ? null : (error as Error),
        }));
        again = setTimeout(() => setFailures((count) => count + 1), sendAgain);
      }
    };
    void send();
    return () => {
      stop.abort();
      clearTimeout(again);
    };
  }, [id, pending, occasion, failures, atOnce, client]);
  return { hindered, refused };
}

/** ms until what was not taken is sent again */
const sendAgain = 2000;

/** changes in one request, at most as many as the server takes */
const mostAtOnce = 500;

function merged(data: ShortlistWithHistory, pending: readonly ShortlistChange[]): Shortlist {
  const taken = new Set(data.history.map(({ key }) => key));
  const at = new Date().toISOString();
  const own = pending
    .filter(({ key }) => !taken.has(key))
    .map((change, place) => ({ ...change, at, sequence: data.sequence + 1 + place }));
  return shortlistOf(data, [...data.history, ...own]);
}
