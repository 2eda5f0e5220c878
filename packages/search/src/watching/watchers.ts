import type { SearchView } from '@tiegel/contract';

type Listener = (view: SearchView, sequence: number) => void;
type Look = (id: string) => { view: SearchView; sequence: number };

/** Those who watch searches. */
export interface Watchers {
  /** Tells the listener at once how the search stands, then on each change; returns how to stop. */
  watch(id: string, listener: Listener): () => void;
  /** Tells those who watch; of progress at most twice a second, of all else at once. */
  changed(id: string, what: 'progress' | 'state'): void;
  close(): void;
}

/** The gap between two reports of progress, ms. */
const gapMs = 500;

export function watchers(look: Look): Watchers {
  const listeners = new Map<string, Set<Listener>>();
  const told = new Map<string, number>();
  const timers = new Map<string, NodeJS.Timeout>();

  function tell(id: string): void {
    clearTimeout(timers.get(id));
    timers.delete(id);
    told.set(id, performance.now());
    for (const listener of listeners.get(id) ?? []) {
      apart(() => {
        const { view, sequence } = look(id);
        listener(view, sequence);
      });
    }
  }

  return {
    watch(id, listener) {
      const { view, sequence } = look(id);
      const theirs = listeners.get(id) ?? new Set();
      listeners.set(id, theirs.add(listener));
      listener(view, sequence);
      return () => {
        theirs.delete(listener);
        if (theirs.size > 0 || listeners.get(id) !== theirs) return;
        listeners.delete(id);
        told.delete(id);
      };
    },
    changed(id, what) {
      if (!listeners.has(id)) return;
      const wait =
        what === 'state' ? 0 : (told.get(id) ?? Number.NEGATIVE_INFINITY) + gapMs - performance.now();
      if (wait <= 0) tell(id);
      else if (!timers.has(id)) timers.set(id, setTimeout(() => tell(id), wait).unref());
    },
    close() {
      for (const timer of timers.values()) clearTimeout(timer);
      listeners.clear();
    },
  };
}

/** What a listener throws must not end the work on a search: it surfaces by itself. */
function apart(act: () => void): void {
  try {
    act();
  } catch (error) {
    queueMicrotask(() => {
      throw error;
    });
  }
}
