import { loadavg } from 'node:os';
import { demoPrices } from '@tiegel/elements';
import { calibrate } from '@tiegel/engine';
import { checkSearch } from '../src/asking/check.ts';
import { DEFAULT_MAX_POINTS } from '../src/index.ts';
import { type Carrier, processes, threads } from './carriers.ts';
import { largestPool, type Ran, runSearch, systemsOf } from './runSearch.ts';

/** What searches took on one kind of workers. */
export interface Scaling {
  carrier: string;
  workers: number;
  /** `seconds` of a search, on the clock: from handing out its first chunk to merging the last outcome. */
  median: number;
  min: number;
  max: number;
  /** Seconds that were estimated before, over those taken: median. */
  estimated: number;
  /** How many times as fast as the first carrier. */
  overFirst: number;
  /** Seconds over those of as many threads in the same round: median; null for threads. */
  overThreads: number | null;
  /** Which share of the time workers scored: median. */
  busy: number;
}

export interface ScalingReport {
  points: number;
  rounds: number;
  /** of the machine, over the minute before the start and before the end */
  load: [number, number];
  carriers: Scaling[];
}

/**
 * Whole searches on so many threads and, where there is a Redis, on as many worker processes, in turns:
 * what is compared follows one another. The pool is as large as keeps two threads busy for about so many seconds.
 */
export async function scaling(
  seconds: number,
  rounds: number,
  log: (line: string) => void,
  workers: readonly number[] = [1, 2],
): Promise<ScalingReport> {
  const load = loadavg()[0]!;
  const { poolSize, points } = poolFor(seconds);
  const carriers: Carrier[] = [];
  for (const number of workers) {
    const beside = await processes(number);
    carriers.push(threads(number), ...(beside === null ? [] : [beside]));
  }
  try {
    const runs = carriers.map((): Ran[] => []);
    for (const carrier of carriers) await runSearch(carrier, systemsOf(7));
    for (let round = 0; round < rounds; round += 1) {
      for (const [index, carrier] of carriers.entries()) {
        const one = await runSearch(carrier, systemsOf(poolSize));
        log(`${carrier.name}: ${one.seconds.toFixed(2)} s, estimated ${one.estimate.toFixed(2)} s`);
        runs[index]!.push(one);
      }
    }
    return {
      ...{ points, rounds, load: [load, loadavg()[0]!] },
      carriers: carriers.map((carrier, index) => {
        const asMany = carriers.findIndex((one) => one.workers === carrier.workers);
        const beside = asMany === index ? null : runs[asMany]!;
        return scalingOf(carrier, runs[index]!, runs[0]!, beside);
      }),
    };
  } finally {
    await Promise.all(carriers.map(({ close }) => close()));
  }
}

/** The smallest pool that keeps two threads busy for so long, by a short calibration. */
function poolFor(seconds: number): { poolSize: number; points: number } {
  for (let poolSize = 7; ; poolSize += 1) {
    const { points, prepared } = checkSearch(systemsOf(poolSize), { prices: demoPrices }, DEFAULT_MAX_POINTS);
    const rate = calibrate(prepared)!;
    if (points / (2 * rate) >= seconds || poolSize === largestPool) return { poolSize, points };
  }
}

function scalingOf(
  { name, workers }: Carrier,
  runs: readonly Ran[],
  first: readonly Ran[],
  beside: readonly Ran[] | null,
): Scaling {
  const seconds = sorted(runs.map((one) => one.seconds));
  const median = middle(seconds);
  return {
    ...{ carrier: name, workers, median, min: seconds[0]!, max: seconds.at(-1)! },
    estimated: middle(sorted(runs.map((one) => one.estimate / one.seconds))),
    overFirst: middle(sorted(first.map((one) => one.seconds))) / median,
    busy: middle(sorted(runs.map((one) => one.busy))),
    overThreads: beside && middle(sorted(runs.map((one, round) => one.seconds / beside[round]!.seconds))),
  };
}

function sorted(values: readonly number[]): number[] {
  return values.toSorted((one, other) => one - other);
}

function middle(values: readonly number[]): number {
  return values[Math.floor(values.length / 2)]!;
}
