/**
 * A bell for one listener. `next` starts to listen; what it returns waits until the bell has rung
 * since then, or the time is over (ms; null: however long). A ring while nobody waits is not lost.
 */
export interface Alarm {
  ring(): void;
  next(): (atMostMs: number | null) => Promise<void>;
}

export function alarm(): Alarm {
  let rung = Promise.withResolvers<void>();
  return {
    ring: () => rung.resolve(),
    next() {
      rung = Promise.withResolvers();
      const { promise, resolve } = rung;
      return async (atMostMs) => {
        const timer = atMostMs === null ? null : setTimeout(resolve, atMostMs);
        await promise;
        if (timer !== null) clearTimeout(timer);
      };
    },
  };
}
