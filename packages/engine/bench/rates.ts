/** Points a second of processor time of one core, over some rounds. */
export interface Rates {
  median: number;
  min: number;
  max: number;
}

/** One side of a comparison: how many points it takes each time, and the work itself, which tells the seconds that it took. */
export interface Timed {
  points: number;
  run: () => number;
}

/**
 * Measures sides in turns, A B C A B C, so that a change of the machine's load meets all of them.
 * Each side has run before, to be compiled.
 */
export function interleavedRates(sides: readonly Timed[], rounds: number): Rates[] {
  const rates = sides.map((): number[] => []);
  for (let round = 0; round < rounds; round += 1) {
    for (const [index, { points, run }] of sides.entries()) rates[index]!.push(points / run());
  }
  return rates.map((list) => {
    const sorted = list.toSorted((one, other) => one - other);
    return { median: sorted[Math.floor(sorted.length / 2)]!, min: sorted[0]!, max: sorted.at(-1)! };
  });
}

/** Seconds of processor time of this thread, not on the clock: what else runs on the machine counts less. */
export function secondsOf(work: () => unknown): number {
  const before = process.threadCpuUsage();
  work();
  const { user, system } = process.threadCpuUsage(before);
  return (user + system) / 1e6;
}
