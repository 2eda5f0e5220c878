import type { Store } from '@tiegel/store';

/** A wait that is shorter is told to nobody, ms: a command that saves something takes the lock for some milliseconds. */
const untoldMs = 1000;
const reason =
  'Another program is writing into the database and keeps it locked; the search goes on by itself as soon as that has finished.';

/** When this process may write into the database, into which others write as well. */
interface TurnToWrite {
  /** Resolves when no other process writes, and at the end of the program. */
  come(): Promise<void>;
  /** What is waited for, null where nothing is. */
  reason(): string | null;
}

/** @param told of a wait that lasts, and with null of its end */
export function turnToWrite(
  store: Pick<Store, 'untilFree'>,
  { signal, told }: { signal: AbortSignal; told: (reason: string | null) => void },
): TurnToWrite {
  let waiting: Promise<void> | null = null;
  let lasts = false;

  async function wait(): Promise<void> {
    if (await store.untilFree({ atMostMs: untoldMs, signal })) return;
    if (signal.aborted) return;
    lasts = true;
    told(reason);
    await store.untilFree({ signal });
    lasts = false;
    if (!signal.aborted) told(null);
  }

  return {
    come() {
      waiting ??= wait().finally(() => {
        waiting = null;
      });
      return waiting;
    },
    reason: () => (lasts ? reason : null),
  };
}
