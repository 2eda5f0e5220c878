import { getCompileCacheDir } from 'node:module';
import { dirname } from 'node:path';
import { Piscina } from 'piscina';
import type { CarriedSearch } from './carriedSearch.ts';
import type { Task } from './queue.ts';
import type { AnnouncedSearch, ScoringAnswer, ScoringRequest } from './scoring.ts';

/** The scoring threads of one process, shared by both adapters. */
export interface ScoringThreads {
  /** Scores in the next free thread. Rejects when scoring throws or its thread dies; a dead thread is replaced. */
  score(search: CarriedSearch, task: Task): Promise<ScoringAnswer>;
  /** Lets the threads that have nothing to do make themselves ready for a search; never rejects. */
  ready(search: CarriedSearch): Promise<void>;
  /** Ends all threads, whatever they are doing; what was being scored, or waited for a thread, rejects. */
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

interface Thread {
  run(request: ScoringRequest): Promise<ScoringAnswer>;
  ready(search: AnnouncedSearch): Promise<unknown>;
  end(): Promise<void>;
}

function startThread(threadFile: URL): Thread {
  const pool = new Piscina<ScoringRequest, ScoringAnswer>({
    filename: threadFile.href,
    minThreads: 1,
    maxThreads: 1,
    concurrentTasksPerWorker: 1,
    idleTimeout: Number.POSITIVE_INFINITY,
    resourceLimits,
    env: threadEnvironment(),
  });
  const waiting = new Set<(reason: Error) => void>();
  // After a thread whose file cannot be loaded the pool starts no other, and would keep its tasks for ever.
  pool.on('error', (reason: Error) => {
    if (pool.threads.length === 0) for (const reject of waiting) reject(reason);
  });

  async function unlessBroken<Answer>(running: Promise<Answer>): Promise<Answer> {
    const { promise: broken, reject } = Promise.withResolvers<never>();
    waiting.add(reject);
    return Promise.race([running, broken]).finally(() => waiting.delete(reject));
  }

  return {
    run: (request) => unlessBroken(pool.run(request)),
    ready: (search) => unlessBroken(pool.run(search as ScoringRequest, { name: 'ready' })),
    end: () => pool.destroy(),
  };
}

/**
 * Up to so many threads, which stay until closed: a fresh one would have to compile everything again. The
 * first starts at once, another when a chunk finds none that is free: a small search is over before a second
 * one has loaded, and would only be held up by that.
 */
export function scoringThreads(threadFile: URL, most: number): ScoringThreads {
  const started: Thread[] = [];
  /** The one that was at work last is the next. */
  const free: Thread[] = [];
  const waiting: PromiseWithResolvers<Thread>[] = [];

  function start(): Thread {
    const thread = startThread(threadFile);
    started.push(thread);
    return thread;
  }
  free.push(start());

  async function nextFree(): Promise<Thread> {
    const thread = free.pop();
    if (thread) return thread;
    if (started.length < most) return start();
    const turn = Promise.withResolvers<Thread>();
    waiting.push(turn);
    return turn.promise;
  }

  async function inThread<Answer>(thread: Thread, job: Promise<Answer>): Promise<Answer> {
    return job.finally(() => {
      const turn = waiting.shift();
      if (turn) turn.resolve(thread);
      else free.push(thread);
    });
  }

  return {
    async score({ id: searchId, plan, stop, sharedKey }, { chunk, cutOff }) {
      const thread = await nextFree();
      return inThread(thread, thread.run({ searchId, plan, chunk, cutOff, stop, sharedKey }));
    },
    async ready({ id: searchId, plan }) {
      const idle = free.splice(0);
      await Promise.allSettled(idle.map((thread) => inThread(thread, thread.ready({ searchId, plan }))));
    },
    async close() {
      for (const turn of waiting.splice(0)) turn.reject(new Error('The threads are closed.'));
      await Promise.all(started.map((thread) => thread.end()));
    },
  };
}
