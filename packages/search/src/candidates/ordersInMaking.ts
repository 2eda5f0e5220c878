import { setImmediate } from 'node:timers/promises';
import type { CandidateQuery } from '@tiegel/contract';
import type { CandidateSet, JoinedStore } from '@tiegel/store';

/** An order of a search's candidates that is being made: by which quantity, and which share of the work is done, 0 to 1. */
export interface OrderInMaking {
  order: string;
  direction: CandidateQuery['direction'];
  share: number;
}

/** The orders that are being made, each once, however many ask for it. */
export interface OrdersInMaking {
  /** Resolves when the order is made; at once where it was. `order`: as it is told; `stored`: as the store calls it. */
  made(set: CandidateSet, asked: Omit<OrderInMaking, 'share'> & { stored: string }): Promise<void>;
  /** Those of a search, by its number. */
  of(search: number): OrderInMaking[];
}

export function ordersInMaking({ candidates }: Pick<JoinedStore, 'candidates'>): OrdersInMaking {
  const running = new Map<string, OrderInMaking & { search: number; done: Promise<void> }>();

  async function make(steps: Generator<number>, tell: (share: number) => void): Promise<void> {
    for (const share of steps) {
      tell(share);
      await setImmediate();
    }
  }

  return {
    async made(set, { order, direction, stored }) {
      const key = `${set.search} ${stored} ${direction}`;
      const known = running.get(key);
      if (known) return known.done;
      const query = { ranges: [], has: [], without: [], order: stored, direction, limit: 1 };
      const steps = candidates.prepare(set, query);
      const one = { order, direction, share: 0, search: set.search, done: Promise.resolve() };
      one.done = make(steps, (share) => {
        one.share = share;
        running.set(key, one);
      }).finally(() => running.delete(key));
      return one.done;
    },
    of: (search) =>
      [...running.values()]
        .filter((one) => one.search === search)
        .map(({ order, direction, share }) => ({ order, direction, share })),
  };
}
