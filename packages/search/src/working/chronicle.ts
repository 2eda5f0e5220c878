import { ProblemError } from '@tiegel/contract/terms';
import type { SearchChange, Store } from '@tiegel/store';
import { type SearchEvent, stateAfter } from '../states.ts';
import type { Watchers } from '../watching/watchers.ts';
import type { DispatchListener } from './dispatch.ts';
import { recentRate } from './recentRate.ts';
import { textOf } from './textOf.ts';
import { activeSeconds, type Underway } from './underway.ts';

/** Writes down what befalls searches, and tells of it. */
export interface Chronicle extends Omit<DispatchListener, 'writable'> {
  /** What is thrown while something that befell a search is written down is its end. */
  orEnd(search: Underway, writing: () => void): void;
  /** The end that an error makes: the store's refusal lets a search stand still, all else is its failure. */
  end(id: string, error: unknown): void;
  /** What the store refused of a search; undefined where it refused nothing. */
  trouble(id: string): ProblemError | undefined;
  forgetTrouble(id: string): void;
}

/** Who is told: of changes that a reader can see, and of a search that was not stopped by a person. */
interface ChronicleListener {
  changed: Watchers['changed'];
  stopped(id: string, reason: string): void;
}

export function chronicle(store: Store, { changed, stopped }: ChronicleListener): Chronicle {
  const troubles = new Map<string, ProblemError>();

  function move(id: string, event: SearchEvent, change: SearchChange = {}): void {
    const record = store.searches.find(id)!;
    const state = stateAfter(record.state, event);
    if (state === null) return;
    store.searches.change(record.number, { state, ...change });
    changed(id, 'state');
  }

  function orEnd(search: Underway, writing: () => void): void {
    try {
      writing();
    } catch (error) {
      search.complete.reject(error);
    }
  }

  return {
    orEnd,
    handedOut(search) {
      orEnd(search, () => move(search.id, 'handOut'));
    },
    /** The clock of a search that rests stands still. */
    resting(search) {
      if (search.since === null) return;
      const seconds = activeSeconds(search);
      orEnd(search, () => {
        move(search.id, 'rest', { activeSeconds: seconds });
        search.earlierSeconds = seconds;
        search.since = null;
        search.rate = recentRate();
      });
    },
    /** Notes why nothing is handed out, where that changed. */
    held(search, reason) {
      if (search.heldBy === reason) return;
      search.heldBy = reason;
      orEnd(search, () => {
        store.searches.change(search.number, { reason });
        changed(search.id, 'state');
      });
    },
    end(id, error) {
      const refused = error instanceof ProblemError && error.faults[0]?.code.startsWith('store/');
      if (refused) troubles.set(id, error);
      stopped(id, textOf(error));
      const finishedAt = new Date().toISOString();
      try {
        if (refused) move(id, 'pause', { reason: textOf(error) });
        else move(id, 'fail', { reason: textOf(error), finishedAt });
      } catch (again) {
        // It cannot even be written down; told all the same, and after a restart the search goes on.
        if (again instanceof ProblemError) troubles.set(id, again);
      }
      changed(id, 'state');
    },
    trouble: (id) => troubles.get(id),
    forgetTrouble: (id) => void troubles.delete(id),
  };
}
