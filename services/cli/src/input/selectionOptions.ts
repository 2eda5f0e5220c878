import type { CandidateQuery } from '@tiegel/contract';
import { type Fault, fault, ProblemError } from '@tiegel/contract/terms';
import { symbolFault } from '@tiegel/elements';
import { type Command, InvalidArgumentError } from 'commander';
import { boundsIn, type LimitOptions, limitOptions } from './limitOptions.ts';

/** Which kept candidates are meant, as commander names it. */
export interface SelectionOptions extends LimitOptions {
  with?: string[];
  without?: string[];
  front?: true;
  rows?: number;
}

/** As many as a page of the service has. */
const mostRows = 1000;
const usualRows = 20;

/** Adds the argument of a search and the filters that the routes of its candidates have. */
export function selectionOptions(command: Command): Command {
  command.argument('<id>', 'of a finished search');
  limitOptions(command);
  return command
    .option('--with <symbols>', 'elements that must be there, with commas between', symbolsIn)
    .option('--without <symbols>', 'elements that must not', symbolsIn)
    .option('--front', 'only members of the Pareto front that the search asked for');
}

/** Adds how many rows are shown. */
export function rowsOption(command: Command): Command {
  return command.option('--rows <number>', `at most so many; ${usualRows} if left out`, rowsIn);
}

/**
 * The candidates that options mean, best first. Whether there are such quantities is known to who has them.
 * @throws ProblemError element/unknown, element/no-data, specification/bounds-crossed
 */
export function queryOf(options: SelectionOptions): CandidateQuery {
  const { with: has = [], without = [], front, rows = usualRows } = options;
  const ranges = boundsIn(options);
  const faults: Fault[] = [
    ...ranges.flatMap(({ quantity, min, max }) =>
      min !== undefined && max !== undefined && min > max
        ? [fault('specification/bounds-crossed', { what: quantity, min, max }, '')]
        : [],
    ),
    ...[...has, ...without].flatMap((symbol) => symbolFault(symbol, '') ?? []),
  ];
  if (faults.length > 0) throw new ProblemError(faults);
  return {
    ...{ ranges, has, without, order: 'rank', direction: 'asc', limit: rows },
    ...(front ? { front } : {}),
  };
}

function symbolsIn(text: string, before: string[] = []): string[] {
  return [...before, ...text.split(/[\s,]+/).filter((part) => part !== '')];
}

function rowsIn(text: string): number {
  const rows = Number(text);
  if (Number.isInteger(rows) && rows >= 1 && rows <= mostRows) return rows;
  throw new InvalidArgumentError(`Write a whole number from 1 to ${mostRows}.`);
}
