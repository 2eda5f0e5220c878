import { availableParallelism } from 'node:os';
import { mostWorkers, problem } from '@tiegel/contract/terms';

/** What the environment says of a search: README.md of the project lists each setting. */
export interface Settings {
  /** null: the threads of this process do the work */
  redisUrl: string | null;
  workers: number;
  /** null: what the project allows */
  maxPoints: number | null;
}

/** Reads REDIS_URL, WORKERS and MAX_POINTS. @throws ProblemError configuration/invalid */
export function readSettings(environment: Readonly<Record<string, string | undefined>>): Settings {
  const redisUrl = environment.REDIS_URL || null;
  // Worker processes do the work where there is a Redis, and the service is told 0 there.
  const leastWorkers = redisUrl === null ? 1 : 0;
  return {
    redisUrl,
    workers: wholeNumber(environment, 'WORKERS', leastWorkers, mostWorkers) ?? availableParallelism(),
    maxPoints: wholeNumber(environment, 'MAX_POINTS', 1, Number.MAX_SAFE_INTEGER),
  };
}

function wholeNumber(
  environment: Readonly<Record<string, string | undefined>>,
  name: string,
  least: number,
  most: number,
): number | null {
  const value = environment[name];
  if (value === undefined || value === '') return null;
  // Digits, or as 1e13: Number() would also take 0x10 and blanks, which nobody means.
  const number = /^\d+(?:e\d+)?$/i.test(value) ? Number(value) : Number.NaN;
  if (number >= least && number <= most) return number;
  throw problem(
    'configuration/invalid',
    { name, value, needed: `a whole number from ${least} to ${most}` },
    `/${name}`,
  );
}
