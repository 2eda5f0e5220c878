import type { Schedule } from '@tiegel/contract';
import { ProblemError } from '@tiegel/contract/terms';
import { isPruned } from '@tiegel/engine';
import type { ChunkQueue } from '@tiegel/queue';
import type { SearchRecord, Store } from '@tiegel/store';
import type { Estimates } from '../asking/estimate.ts';
import type { Watchers } from '../watching/watchers.ts';
import { chronicle } from './chronicle.ts';
import { dispatcher } from './dispatch.ts';
import { clearCandidates, finish } from './finish.ts';
import { takeReports } from './reports.ts';
import { resume } from './resume.ts';
import { turnToWrite } from './turnToWrite.ts';
import { giveBack, type Underway } from './underway.ts';

/** The work of this process on all searches. */
export interface Work {
  /** Carries a search on until it is done, failed or stopped. */
  carry(record: SearchRecord): void;
  /** Stops working on a search; what comes back of it afterwards is not waited for. */
  stop(id: string): void;
  /** Takes away the candidates of cancelled searches, behind what is asked meanwhile. */
  tidy(cancelled: readonly Pick<SearchRecord, 'number'>[]): void;
  underway(id: string): Underway | undefined;
  /** Works on a search by another timetable from now on. */
  reschedule(id: string, schedule: Schedule): void;
  /** What the store refused of a search, so that the search stands still; undefined where it works. */
  trouble(id: string): ProblemError | undefined;
  /** Why nothing can be written down of a search at the moment, and what it waits for; null where it does not wait. */
  waits(id: string): string | null;
  forgetTrouble(id: string): void;
  close(): Promise<void>;
}

/** Who is told: of changes that a reader can see, of how fast a search was scored, of one that was not stopped by a person, and of one that waits or goes on (null). */
export interface WorkListener {
  changed: Watchers['changed'];
  learn: Estimates['learn'];
  stopped(id: string, reason: string): void;
  waits(id: string, reason: string | null): void;
}

export function work(store: Store, queue: ChunkQueue, told: WorkListener): Work {
  const { changed } = told;
  const searches = new Map<string, Underway>();
  const written = chronicle(store, told);
  const running = new Set<Promise<void>>();
  /** Aborted when the program ends. */
  const ending = new AbortController();
  const turn = turnToWrite(store, { signal: ending.signal, told: tellWaiting });
  const dispatch = dispatcher(queue, { ...written, writable: turn.come });
  takeReports(queue, store, {
    underway: (id) => searches.get(id),
    orEnd: written.orEnd,
    changed,
    taken: dispatch.wake,
    writable: turn.come,
    ending: ending.signal,
  });
  queue.onLoss(() => {
    for (const search of searches.values()) giveBack(search, search.inFlight.keys());
    dispatch.wake();
  });

  /** The life of a search in this process, from where the ledger says it stands. Never rejects. */
  async function carry(record: SearchRecord): Promise<void> {
    let search: Underway | undefined;
    try {
      search = resume(record, store);
      searches.set(record.id, search);
      await scored(search);
      await finish(search, store, { stop: search.stop.signal, writable: turn.come });
      changed(record.id, 'state');
    } catch (error) {
      if (search?.stop.signal.aborted) await tidyIfCancelled(search);
      else if (search !== undefined && isLocked(error)) return takeUpAnew(search);
      else written.end(record.id, error);
    }
    if (search !== undefined) leave(search);
  }

  /** A lock passes: when it has, the search goes on from where the ledger says it stands. */
  async function takeUpAnew(search: Underway): Promise<void> {
    dispatch.remove(search);
    await turn.come();
    leave(search);
    if (search.stop.signal.aborted) return;
    let record: SearchRecord;
    try {
      record = store.searches.find(search.id)!;
    } catch (error) {
      return written.end(search.id, error);
    }
    await carry(record);
  }

  /** Hands out every unfinished chunk; resolves when the outcome of the last one was taken. */
  async function scored(search: Underway): Promise<void> {
    const { stop, complete, plan, scored } = search;
    stop.signal.addEventListener('abort', () => complete.reject(stop.signal.reason));
    if (search.unfinished === 0) complete.resolve();
    else dispatch.add(search);
    await complete.promise;
    dispatch.remove(search);
    if (!isPruned(plan.specification)) told.learn(plan.specification, scored.points, scored.seconds);
  }

  function leave(search: Underway): void {
    // Not there any more, or there anew: somebody stopped it.
    if (searches.get(search.id) !== search) return;
    searches.delete(search.id);
    dispatch.remove(search);
    // Whatever becomes of it: workers that are not told stop at the end of their chunks. When the
    // program ends they may finish them, and the next start collects what they found.
    if (!ending.signal.aborted) queue.withdraw(search.id).catch(() => {});
  }

  /** A cancelled search leaves no candidates behind. Some that cannot be taken away do no harm: the next start tries again. */
  async function tidy(cancelled: readonly Pick<SearchRecord, 'number'>[]): Promise<void> {
    try {
      const going = { stop: ending.signal, writable: turn.come };
      for (const { number } of cancelled) await clearCandidates(number, store, going);
    } catch {}
  }

  async function tidyIfCancelled(search: Underway): Promise<void> {
    try {
      if (store.searches.find(search.id)?.state !== 'cancelled') return;
    } catch {
      return;
    }
    await tidy([search]);
  }

  function tellWaiting(reason: string | null): void {
    for (const id of searches.keys()) {
      told.waits(id, reason);
      changed(id, 'state');
    }
  }

  /** Closing waits for what goes on. */
  function goOn(work: Promise<void>): void {
    const going = work.finally(() => running.delete(going));
    running.add(going);
  }

  return {
    carry: (record) => goOn(carry(record)),
    tidy: (cancelled) => goOn(tidy(cancelled)),
    stop(id) {
      const search = searches.get(id);
      search?.stop.abort(new Error(`work on search ${id} was stopped`));
      if (search !== undefined) leave(search);
    },
    underway: (id) => searches.get(id),
    reschedule(id, schedule) {
      const search = searches.get(id);
      if (search !== undefined) search.schedule = schedule;
      dispatch.wake();
    },
    trouble: written.trouble,
    waits: (id) => (searches.has(id) ? turn.reason() : null),
    forgetTrouble: written.forgetTrouble,
    async close() {
      ending.abort(new Error('the program ends'));
      for (const search of searches.values()) search.stop.abort(ending.signal.reason);
      await dispatch.close();
      await Promise.allSettled(running);
    },
  };
}

function isLocked(error: unknown): boolean {
  return error instanceof ProblemError && error.faults[0]?.code === 'store/busy';
}
