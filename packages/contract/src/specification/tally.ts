import { z } from 'zod';

/** What a search counts beside its grid points: see `tallySchema`. */
export const tallies = ['each', 'all', 'none'] as const;
export type Tally = (typeof tallies)[number];

/**
 * The key `tally`: what is counted of the points that pass. Counting costs, for what is counted
 * must be looked at, while a search for the best alone may leave out whatever cannot be among them.
 *
 * - each (the default): passes of every limit and of all together, and points without a value;
 * - all: passes of all limits together;
 * - none: nothing.
 *
 * Grid points and systems are exact in every mode, and the best are the same.
 */
export const tallySchema = z
  .enum(tallies)
  .describe(
    'Write "each" to count the passes of every limit, "all" to count those of all limits together, or "none" to count none.',
  );
