import { getCompileCacheDir } from 'node:module';
import { dirname } from 'node:path';
import { Piscina } from 'piscina';
import type { CarriedSearch } from './carriedSearch.ts';
import type { Task } from './queue.ts';
import type { ScoringAnswer, ScoringRequest } from './scoring.ts';

/** The scoring threads of one process, shared by both adapters. */
export interface ScoringThreads {
  /** Scores in the next free thread. Rejects when scoring throws or its thread dies; a dead thread is replaced. */
  score(search: CarriedSearch, task: Task): Promise<ScoringAnswer>;
  /** Lets so many threads make themselves ready for a search; never rejects. */
  ready(search: CarriedSearch, threads: number): Promise<void>;
  /** Ends all threads, whatever they are doing; what was being scored rejects. */
  close(): Promise<void>;
}

/** Scoring hardly allocates; the usual 48 MB of young heap would be filled all the same, in each thread. */
const resourceLimits = { maxYoungGenerationSizeMb: 6 };

/**
 * Threads share what Node has kept of the sources when the process does (enableCompileCache). They
 * only learn of it through their environment, and without it each loads a TypeScript reader of 11 MB.
 */
function threadEnvironment(): NodeJS.ProcessEnv {
  const cache = getCompileCacheDir();
  return cache === undefined ? process.env : { ...process.env, NODE_COMPILE_CACHE: dirname(cache) };
}

/** Starts `threads` threads, which stay until closed: a fresh one would have to compile everything again. */
export function scoringThreads(threadFile: URL, threads: number): ScoringThreads {
  const pool = new Piscina<ScoringRequest, ScoringAnswer>({
    filename: threadFile.href,
    minThreads: threads,
    maxThreads: threads,
    concurrentTasksPerWorker: 1,
    idleTimeout: Number.POSITIVE_INFINITY,
    resourceLimits,
    env: threadEnvironment(),
  });
  const waiting = new Set<(reason: Error) => void>();
  // After threads whose file cannot be loaded the pool starts no other, and would keep its tasks for ever.
  pool.on('error', (reason: Error) => {
    if (pool.threads.length === 0) for (const reject of waiting) reject(reason);
  });

  async function unlessBroken<Answer>(running: Promise<Answer>): Promise<Answer> {
    const { promise: broken, reject } = Promise.withResolvers<never>();
    waiting.add(reject);
    return Promise.race([running, broken]).finally(() => waiting.delete(reject));
  }

  return {
    score({ id: searchId, plan, stop, sharedKey }, { chunk, cutOff }) {
      return unlessBroken(pool.run({ searchId, plan, chunk, cutOff, stop, sharedKey }));
    },
    async ready({ id: searchId, plan }, threads) {
      const one = () => unlessBroken(pool.run({ searchId, plan } as ScoringRequest, { name: 'ready' }));
      await Promise.allSettled(Array.from({ length: threads }, one));
    },
    close: () => pool.destroy(),
  };
}
