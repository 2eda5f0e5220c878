import { randomBytes } from 'node:crypto';
import { decodeOutcome, problem } from '@tiegel/contract';
import { Queue, QueueEvents } from 'bullmq';
import { presentThreads } from './presence.ts';
import type { ChunkQueue, Report, Task } from './queue.ts';
import { redisAddress } from './redisAddress.ts';
import { impatient, type Log, patient, redisLine } from './redisLine.ts';
import {
  type JobData,
  jobIdOf,
  outcomeKey,
  placeOf,
  planKey,
  planLifeSeconds,
  prefix,
  queueName,
  type Verdict,
} from './redisNames.ts';
import { within } from './within.ts';

/** How often what is under way is compared with what Redis holds (ms): finds lost events, and a Redis that was emptied. */
const compareMs = 5000;
const closeMs = 2000;

/** A task under way; `added` once Redis has said that it took it. */
interface Sent {
  task: Task;
  added: boolean;
}

/**
 * Chunks scored by worker processes (see redisWorker) on any number of hosts, through BullMQ.
 * `url` is a REDIS_URL; throws configuration/invalid. Opening does not wait for Redis: while it is out of
 * reach, announce and send reject with queue/out-of-reach at once.
 */
export function redisQueue({ url, log = () => {} }: { url: string; log?: Log }): ChunkQueue {
  const line = redisLine(url, impatient, log);
  const { redis, place } = line;
  // Without BullMQ's look at the server's version, which succeeds at the first attempt or never.
  const queue = new Queue<JobData, Verdict>(queueName, {
    connection: redis,
    prefix,
    skipVersionCheck: true,
    skipWaitingForReady: true,
  });
  // From the beginning of what is kept: '$' would miss what ends before the first reading.
  const events = new QueueEvents(queueName, {
    connection: { ...redisAddress(url).options, ...patient },
    prefix,
    skipVersionCheck: true,
    lastEventId: '0-0',
  });
  const sender = randomBytes(4).toString('hex');
  const plans = new Map<string, string>();
  const sent = new Map<string, Sent>();
  let onReport: (report: Report) => void = () => {};
  let onLoss: () => void = () => {};

  async function reached(work: () => Promise<void>): Promise<void> {
    await line.tried;
    try {
      await work();
    } catch (error) {
      const why = redis.status === 'ready' ? (error as Error).message : line.wrong();
      throw problem('queue/out-of-reach', { place, why });
    }
  }

  /** What a finished job has to report; null when that is known already, or of no interest any more. */
  async function reportOf(jobId: string, verdict: Verdict): Promise<Report | null> {
    const where = placeOf(jobId);
    if (!where || !plans.has(where.searchId)) return null;
    if (verdict.kind === 'stopped') return sent.has(jobId) ? { ...verdict, ...where } : null;
    const outcome = await redis.getBuffer(outcomeKey(jobId));
    if (!outcome || !plans.has(where.searchId)) return null;
    try {
      return { ...verdict, ...where, outcome: decodeOutcome(outcome) };
    } catch (error) {
      // What a worker of another version wrote: waiting for it would be for ever.
      return sent.has(jobId) ? { kind: 'failed', ...where, reason: (error as Error).message } : null;
    }
  }

  function deliver(jobId: string, report: Report | null): void {
    if (!report) return;
    sent.delete(jobId);
    // Outside of BullMQ's emitter and of our own catch: what the collector throws is not for them.
    queueMicrotask(() => onReport(report));
    // Where that fails, it expires by itself.
    redis.del(outcomeKey(jobId)).catch(() => {});
  }

  function fail(jobId: string, reason: string): void {
    if (sent.has(jobId)) deliver(jobId, { kind: 'failed', ...placeOf(jobId)!, reason });
  }

  /** Makes up for a lost event, and says whether the task itself is lost. */
  async function isLost(jobId: string): Promise<boolean> {
    const job = await queue.getJob(jobId);
    if (!job) return sent.has(jobId);
    if (!job.finishedOn) return false;
    if (job.failedReason) fail(jobId, job.failedReason);
    else deliver(jobId, await reportOf(jobId, job.returnvalue));
    return sent.has(jobId);
  }

  /** Rejects while Redis is out of reach; its return, and every few seconds, bring the next comparison. */
  async function compare(): Promise<void> {
    const added = [...sent].filter(([, one]) => one.added).map(([jobId]) => jobId);
    const lost: string[] = [];
    for (const jobId of added) if (await isLost(jobId)) lost.push(jobId);
    if (lost.length === 0) return;
    log('warn', `Redis at ${place} has lost ${lost.length} chunks under way; they are sent again.`);
    sent.clear();
    onLoss();
  }

  events.on('completed', async ({ jobId, returnvalue }) => {
    const verdict = returnvalue as unknown as Verdict;
    // Where Redis went meanwhile, the comparison makes up for it.
    deliver(jobId, await reportOf(jobId, verdict).catch(() => null));
  });
  events.on('failed', ({ jobId, failedReason }) => fail(jobId, failedReason));
  events.on('error', line.onError);
  queue.on('error', line.onError);
  const comparison = () => void compare().catch(line.onError);
  redis.on('ready', comparison);
  const comparing = setInterval(comparison, compareMs).unref();

  return {
    announce: (searchId, plan) =>
      reached(async () => {
        const json = JSON.stringify(plan);
        await redis.set(planKey(searchId), json, 'EX', planLifeSeconds);
        plans.set(searchId, json);
      }),
    async send(task) {
      const { searchId, chunk, cutOff } = task;
      const plan = plans.get(searchId);
      if (plan === undefined) throw notAnnounced(searchId);
      const jobId = jobIdOf(task, sender);
      const one = { task, added: false };
      await reached(async () => {
        const kept = await redis.expire(planKey(searchId), planLifeSeconds);
        if (kept === 0 && plans.has(searchId))
          await redis.set(planKey(searchId), plan, 'EX', planLifeSeconds);
        // Withdrawn meanwhile: sent now, nobody would report it.
        if (!plans.has(searchId)) return;
        sent.set(jobId, one);
        await queue.add('chunk', { searchId, chunk, cutOff }, { jobId });
        one.added = true;
      }).catch((error) => {
        sent.delete(jobId);
        throw error;
      });
      if (!one.added) throw notAnnounced(searchId);
    },
    onReport(listener) {
      onReport = listener;
    },
    onLoss(listener) {
      onLoss = listener;
    },
    workers: async () => {
      await line.tried;
      return presentThreads(redis).catch(() => 0);
    },
    async withdraw(searchId) {
      plans.delete(searchId);
      for (const [jobId, { task }] of sent) {
        if (task.searchId !== searchId) continue;
        sent.delete(jobId);
        onReport({ kind: 'stopped', searchId, ordinal: task.chunk.ordinal });
      }
      // Out of reach: workers score what they hold of it, nobody collects it, and the plan expires.
      await redis.del(planKey(searchId)).catch(() => {});
    },
    async close() {
      clearInterval(comparing);
      plans.clear();
      sent.clear();
      // With Redis gone BullMQ waits for an 'end' that never comes; the second line cuts the connection.
      const parting = Promise.allSettled([events.close(), queue.close()]);
      await within(redis.status === 'ready' ? closeMs : 0, parting);
      await within(closeMs, events.getBackend().close(true));
      redis.disconnect();
    },
  };
}

const notAnnounced = (searchId: string) => new Error(`Search ${searchId} was not announced.`);
