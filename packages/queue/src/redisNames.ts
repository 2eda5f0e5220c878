import type { Chunk } from '@tiegel/contract';
import type { Task } from './queue.ts';

/** Every key of ours in Redis begins with this; BullMQ's as well. */
export const prefix = 'tiegel';
export const queueName = 'chunks';

/** The plan of a search as JSON, from announce to withdraw. Sending renews its time: it only ends when its search is abandoned. */
export const planKey = (searchId: string): string => `${prefix}:plan:${searchId}`;
export const planLifeSeconds = 7 * 24 * 3600;

/** The encoded outcome of a job, from the end of scoring until it is collected. */
export const outcomeKey = (jobId: string): string => `${prefix}:outcome:${jobId}`;
export const outcomeLifeSeconds = 3600;

/** What travels in a job: a task without what its id says. */
export interface JobData {
  searchId: string;
  chunk: Chunk;
  cutOff: number | null;
}

/** What a job returns; the outcome itself waits under outcomeKey, so that neither jobs nor events grow with it. */
export type Verdict = { kind: 'done'; scoringSeconds: number } | { kind: 'stopped' };

/**
 * BullMQ takes a second job of the same id for the first, as long as the first is kept: an hour, when
 * it failed. Through one queue no attempt has the number of another; `sender` differs each time a
 * queue is opened, so that attempts numbered anew after a restart are new jobs.
 */
export function jobIdOf({ searchId, chunk, attempt }: Task, sender: string): string {
  return `${searchId}.c${chunk.ordinal}.t${attempt}.${sender}`;
}

/** Reads a job id back; null when it is none of ours. */
export function placeOf(jobId: string): { searchId: string; ordinal: number } | null {
  const parts = /^(.+)\.c(\d+)\.t\d+\.[^.]+$/.exec(jobId);
  return parts ? { searchId: parts[1]!, ordinal: Number(parts[2]) } : null;
}
