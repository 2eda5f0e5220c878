import { availableParallelism } from 'node:os';
import { type Fault, fault, mostWorkers, ProblemError } from '@tiegel/contract/terms';

/** What a worker is told from outside; README.md lists each setting with its default. */
export interface Configuration {
  redisUrl: string;
  /** scoring threads */
  workers: number;
  /** a file whose date says when Redis was last reached, for a container's health check; null: none */
  aliveFile: string | null;
}

/**
 * Reads the settings from the environment; an empty text counts as left out. What is wrong with
 * the form of REDIS_URL shows when it is used. Throws configuration/missing and configuration/invalid.
 */
export function readConfiguration(environment: Readonly<Record<string, string | undefined>>): Configuration {
  const faults: Fault[] = [];
  const redisUrl = environment.REDIS_URL ?? '';
  if (redisUrl === '') {
    const needed = 'the address of Redis that the api has, such as redis://:PASSWORD@HOST:6379';
    faults.push(fault('configuration/missing', { name: 'REDIS_URL', needed }, '/REDIS_URL'));
  }
  const value = environment.WORKERS || String(availableParallelism());
  const workers = /^\d{1,4}$/.test(value) ? Number(value) : 0;
  if (workers < 1 || workers > mostWorkers) {
    const needed = `a whole number of threads from 1 to ${mostWorkers}`;
    faults.push(fault('configuration/invalid', { name: 'WORKERS', value, needed }, '/WORKERS'));
  }
  if (faults.length > 0) throw new ProblemError(faults);
  return { redisUrl, workers, aliveFile: environment.ALIVE_FILE || null };
}
