import { isOver, problem, type SearchView } from '@tiegel/contract';
import type { Work } from '../working/work.ts';
import type { Watchers } from './watchers.ts';

/** Those who wait for the end of a search. */
export interface Endings {
  /** Resolves when the search is over. Rejects with the problem when the store refused something of it, with search/closed at closing. */
  finished(id: string): Promise<SearchView>;
  close(): void;
}

export function endings(watchers: Watchers, work: Work): Endings {
  const waiting = new Set<(reason: unknown) => void>();
  return {
    async finished(id) {
      const { promise, resolve, reject } = Promise.withResolvers<SearchView>();
      const stop = watchers.watch(id, (view) => {
        const trouble = work.trouble(id);
        if (isOver(view.state)) resolve(view);
        else if (trouble !== undefined) reject(trouble);
      });
      waiting.add(reject);
      return promise.finally(() => {
        waiting.delete(reject);
        stop();
      });
    },
    close() {
      for (const reject of waiting) reject(problem('search/closed'));
    },
  };
}
