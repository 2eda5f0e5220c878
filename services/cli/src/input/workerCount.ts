import { mostWorkers } from '@tiegel/contract/terms';
import { InvalidArgumentError } from 'commander';

/** The number of --workers. */
export function workerCount(text: string): number {
  const number = Number(text);
  if (Number.isInteger(number) && number >= 1 && number <= mostWorkers) return number;
  throw new InvalidArgumentError(`It must be a whole number from 1 to ${mostWorkers}.`);
}
