import { randomBytes } from 'node:crypto';
import { encodeOutcome } from '@tiegel/contract';
import { type Job, WaitingError, Worker } from 'bullmq';
import { type CarriedSearch, carriedSearch, stopScoring } from './carriedSearch.ts';
import { announcePresence, withdrawPresence } from './presence.ts';
import { type Log, patient, redisLine } from './redisLine.ts';
import {
  type JobData,
  outcomeKey,
  outcomeLifeSeconds,
  planKey,
  prefix,
  queueName,
  type Verdict,
} from './redisNames.ts';
import { scoringThreads } from './scoringThreads.ts';
import { within } from './within.ts';

/**
 * A worker that is killed renews no lock: after `lockDuration` the lock is gone, and the second
 * check after that hands its chunks to another: at most 3 + 2 × 1.5 s. Locks are renewed on this
 * process's event loop, which scores nothing.
 */
const takeover = { lockDuration: 3000, stalledInterval: 1500 };
/** A chunk whose workers died this often is reported as failed: it may be what kills them. */
const maxStalledCount = 5;
const beatMs = 1000;
/** Finished jobs are kept a while for whoever looks into Redis; they hold no outcome. */
const kept = { age: 3600, count: 1000 };

export interface RedisWorkerOptions {
  /** a REDIS_URL */
  url: string;
  /** exports what scoring.ts describes */
  threadFile: URL;
  threads: number;
  log?: Log;
  /** Called about once a second while Redis is reached. */
  onBeat?: () => void;
}

/** Scoring threads of this process, at work for every redisQueue on the same Redis. */
export interface RedisWorker {
  /** Takes nothing new; what is not finished after `finishMs` goes back to the queue. Ends within finishMs and some seconds. */
  close(finishMs: number): Promise<void>;
}

/** Starts at once and goes on for ever, through any absence of Redis. Throws configuration/invalid. */
export function redisWorker(options: RedisWorkerOptions): RedisWorker {
  const { url, threadFile, threads, log = () => {}, onBeat = () => {} } = options;
  const line = redisLine(url, patient, log);
  const { redis } = line;
  const pool = scoringThreads(threadFile, threads);
  const name = randomBytes(6).toString('hex');
  const searches = new Map<string, CarriedSearch>();
  let handingBack = false;

  /** The search with its plan, from Redis the first time; null once it was withdrawn. */
  async function searchOf(id: string): Promise<CarriedSearch | null> {
    const known = searches.get(id);
    if (known) return known;
    const plan = await redis.getBuffer(planKey(id));
    if (!plan) return null;
    const search = searches.get(id) ?? carriedSearch(id, plan);
    searches.set(id, search);
    return search;
  }

  async function score(job: Job<JobData, Verdict>, token?: string): Promise<Verdict> {
    const search = await searchOf(job.data.searchId);
    if (!search) return { kind: 'stopped' };
    if (handingBack) return handBack(job, token);
    const answer = await pool.score(search, { ...job.data, attempt: 0 });
    if (answer.kind === 'stopped') return handingBack ? handBack(job, token) : answer;
    const { outcome, ...verdict } = answer;
    await redis.set(outcomeKey(job.id!), Buffer.from(encodeOutcome(outcome)), 'EX', outcomeLifeSeconds);
    return verdict;
  }

  async function handBack(job: Job, token?: string): Promise<never> {
    await job.moveToWait(token);
    throw new WaitingError();
  }

  const worker = new Worker<JobData, Verdict>(queueName, score, {
    connection: redis,
    prefix,
    concurrency: threads,
    ...takeover,
    maxStalledCount,
    runRetryDelay: 1000,
    removeOnComplete: kept,
    removeOnFail: kept,
  });
  worker.on('failed', (job, error) => log('error', `Chunk ${job?.id} failed: ${error.message}`));
  worker.on('stalled', (jobId) => log('warn', `Chunk ${jobId} is taken over from a worker that is gone.`));
  worker.on('error', line.onError);

  async function beat(): Promise<void> {
    if (redis.status !== 'ready') return;
    await announcePresence(redis, name, threads);
    for (const search of searches.values()) {
      if ((await redis.exists(planKey(search.id))) === 1) continue;
      searches.delete(search.id);
      stopScoring(search);
    }
    onBeat();
  }
  const beating = setInterval(() => void beat().catch(line.onError), beatMs);
  redis.on('ready', () => void beat().catch(line.onError));

  return {
    async close(finishMs) {
      clearInterval(beating);
      const finished = worker.close();
      // Without Redis nothing can be delivered or handed back: others take the chunks over.
      const reached = redis.status === 'ready';
      await within(reached ? finishMs : 0, finished);
      handingBack = true;
      for (const search of searches.values()) stopScoring(search);
      await within(reached ? 2000 : 0, finished);
      await within(reached ? 1000 : 0, withdrawPresence(redis, name));
      await within(1000, worker.getBackend().close(true));
      redis.disconnect();
      await pool.close();
    },
  };
}
