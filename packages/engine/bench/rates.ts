/** Points a second of processor time of one core, over some rounds. */
export interface Rates {
  median: number;
  min: number;
  max: number;
}

/** One side of a comparison: how many points it takes each time, and the work itself. */
export interface Side {
  points: number;
  run: () => unknown;
}

/**
 * Measures sides in turns, A B A B, so that a change of the machine's load meets all of them. Each
 * side runs once before, to be compiled. Processor time of this thread, not time on the clock:
 * what else runs on the machine counts less.
 */
export function interleavedRates(sides: readonly Side[], rounds: number): Rates[] {
  for (const { run } of sides) run();
  const rates = sides.map((): number[] => []);
  for (let round = 0; round < rounds; round += 1) {
    for (const [index, { points, run }] of sides.entries()) rates[index]!.push(points / secondsOf(run));
  }
  return rates.map((list) => {
    const sorted = list.toSorted((one, other) => one - other);
    return { median: sorted[Math.floor(sorted.length / 2)]!, min: sorted[0]!, max: sorted.at(-1)! };
  });
}

function secondsOf(run: () => unknown): number {
  const before = process.threadCpuUsage();
  run();
  const { user, system } = process.threadCpuUsage(before);
  return (user + system) / 1e6;
}
