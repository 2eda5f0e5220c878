import { mostWorkers, problem } from '@tiegel/contract/terms';
import { type CarriedSearch, carriedSearch, stopScoring } from './carriedSearch.ts';
import type { ChunkQueue, Report, Task } from './queue.ts';
import { scoringThreads } from './scoringThreads.ts';

interface Sent {
  search: CarriedSearch;
  task: Task;
}

/**
 * Chunks scored by threads of this process: nothing to install, nothing to reach. `threadFile`
 * exports what scoring.ts describes. Loses nothing while the process lives, so `onLoss` never calls.
 * Throws configuration/invalid for less than one thread.
 */
export function embeddedQueue({ threadFile, threads }: { threadFile: URL; threads: number }): ChunkQueue {
  if (threads < 1) {
    const needed = `a whole number of threads from 1 to ${mostWorkers}`;
    throw problem('configuration/invalid', { name: 'WORKERS', value: threads, needed }, '/WORKERS');
  }
  const pool = scoringThreads(threadFile, threads);
  const searches = new Map<string, CarriedSearch>();
  const sent = new Set<Sent>();
  let listener: (report: Report) => void = () => {};

  async function score(one: Sent): Promise<void> {
    const where = { searchId: one.search.id, ordinal: one.task.chunk.ordinal };
    const report = await pool.score(one.search, one.task).then(
      (answer): Report => ({ ...answer, ...where }),
      (error: Error): Report => ({ kind: 'failed', ...where, reason: error.message }),
    );
    // Not there any more: withdrawn or closed meanwhile.
    if (sent.delete(one)) listener(report);
  }

  function forget(search: CarriedSearch): Sent[] {
    searches.delete(search.id);
    stopScoring(search);
    const theirs = [...sent].filter((one) => one.search === search);
    for (const one of theirs) sent.delete(one);
    return theirs;
  }

  return {
    async announce(searchId, plan) {
      if (searches.has(searchId)) return;
      const search = carriedSearch(searchId, Buffer.from(JSON.stringify(plan)));
      searches.set(searchId, search);
      // Threads that score make themselves ready when its chunks come.
      await pool.ready(search);
    },
    async send(task) {
      const search = searches.get(task.searchId);
      if (!search) throw new Error(`Search ${task.searchId} was not announced.`);
      const one = { search, task };
      sent.add(one);
      void score(one);
    },
    onReport(collector) {
      listener = collector;
    },
    onLoss() {},
    workers: async () => threads,
    async withdraw(searchId) {
      const search = searches.get(searchId);
      if (!search) return;
      for (const { task } of forget(search)) {
        listener({ kind: 'stopped', searchId, ordinal: task.chunk.ordinal });
      }
    },
    async close() {
      for (const search of [...searches.values()]) forget(search);
      await pool.close();
    },
  };
}
