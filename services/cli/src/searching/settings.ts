import { availableParallelism } from 'node:os';
import { problem } from '@tiegel/contract/terms';
import { mostWorkers } from '../input/workerCount.ts';

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
  return {
    redisUrl: environment.REDIS_URL || null,
    workers: wholeNumber(environment, 'WORKERS', mostWorkers) ?? availableParallelism(),
    maxPoints: wholeNumber(environment, 'MAX_POINTS', Number.MAX_SAFE_INTEGER),
  };
}

function wholeNumber(
  environment: Readonly<Record<string, string | undefined>>,
  name: string,
  most: number,
): number | null {
  const value = environment[name];
  if (value === undefined || value === '') return null;
  const number = Number(value);
  if (Number.isInteger(number) && number >= 1 && number <= most) return number;
  throw problem(
    'configuration/invalid',
    { name, value, needed: `a whole number from 1 to ${most}` },
    `/${name}`,
  );
}
