import { loadavg } from 'node:os';
import { demoPrices } from '@tiegel/elements';
import { calibrate } from '@tiegel/engine';
import { openStore } from '@tiegel/store';
import { checkSearch } from '../src/check.ts';
import { candidateColumns, DEFAULT_MAX_POINTS, openSearches } from '../src/index.ts';
import { type Carrier, processes, threads } from './carriers.ts';

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
}

export interface ScalingReport {
  points: number;
  rounds: number;
  /** of the machine, over the minute before the start and before the end */
  load: [number, number];
  carriers: Scaling[];
}

/** More than an acceptable pool ever needs, in an order of no meaning. */
const elements = [
  ...['Al', 'Co', 'Cr', 'Cu', 'Fe', 'Hf', 'Mn', 'Mo', 'Nb', 'Ni', 'Pd', 'Re', 'Si', 'Ta', 'Ti'],
  ...['V', 'W', 'Y', 'Zn', 'Zr', 'Ag', 'Au', 'Ir', 'Mg', 'Pt', 'Rh', 'Ru', 'Sn'],
];

/** All five-component systems of so many elements at 1 %, six limits, each counted. */
function request(poolSize: number): object {
  return {
    name: `scaling over ${poolSize} elements`,
    elements: { pool: elements.slice(0, poolSize) },
    components: 5,
    fractions: { step: 1, min: 5, max: 35 },
    limits: [
      { quantity: 'sizeMismatch', max: 9.5 },
      { quantity: 'omega', min: 0.8 },
      { quantity: 'valenceElectronConcentration', min: 4, max: 8.6 },
      { quantity: 'mixingEnthalpy', min: -30, max: 8 },
      { quantity: 'density', max: 13 },
      { quantity: 'cost', max: 400 },
    ],
    rank: [{ quantity: 'density', prefer: 'low' }],
  };
}

/**
 * Whole searches on one and two threads, and on one and two worker processes where there is a
 * Redis, in turns. The pool is as large as keeps two threads busy for about so many seconds.
 */
export async function scaling(
  seconds: number,
  rounds: number,
  log: (line: string) => void,
): Promise<ScalingReport> {
  const load = loadavg()[0]!;
  const { poolSize, points } = poolFor(seconds);
  const opened = [threads(1), threads(2), await processes(1), await processes(2)];
  const carriers = opened.filter((one) => one !== null);
  try {
    const runs = carriers.map((): Run[] => []);
    for (const carrier of carriers) await run(carrier, request(7));
    for (let round = 0; round < rounds; round += 1) {
      for (const [index, carrier] of carriers.entries()) {
        const one = await run(carrier, request(poolSize));
        log(`${carrier.name}: ${one.seconds.toFixed(2)} s, estimated ${one.estimate.toFixed(2)} s`);
        runs[index]!.push(one);
      }
    }
    return {
      ...{ points, rounds, load: [load, loadavg()[0]!] },
      carriers: carriers.map((carrier, index) => scalingOf(carrier, runs[index]!, runs[0]!)),
    };
  } finally {
    await Promise.all(carriers.map(({ close }) => close()));
  }
}

interface Run {
  seconds: number;
  estimate: number;
}

/** One search from its request to its end, in a database of its own. */
async function run({ queue }: Carrier, what: object): Promise<Run> {
  const store = openStore({ file: null, columns: candidateColumns });
  const searches = await openSearches({ store, queue });
  try {
    const { seconds: estimate } = await searches.size(what);
    const { id } = await searches.submit(what);
    const { seconds, state, reason } = await searches.finished(id);
    if (state !== 'done') throw new Error(`${state}: ${reason}`);
    return { seconds: seconds!, estimate: estimate! };
  } finally {
    await searches.close();
    store.close();
  }
}

/** The smallest pool that keeps two threads busy for so long, by a short calibration. */
function poolFor(seconds: number): { poolSize: number; points: number } {
  for (let poolSize = 7; ; poolSize += 1) {
    const { points, prepared } = checkSearch(request(poolSize), { prices: demoPrices }, DEFAULT_MAX_POINTS);
    const rate = calibrate(prepared)!;
    if (points / (2 * rate) >= seconds || poolSize === elements.length) return { poolSize, points };
  }
}

function scalingOf({ name, workers }: Carrier, runs: readonly Run[], first: readonly Run[]): Scaling {
  const seconds = sorted(runs.map((one) => one.seconds));
  const median = middle(seconds);
  return {
    ...{ carrier: name, workers, median, min: seconds[0]!, max: seconds.at(-1)! },
    estimated: middle(sorted(runs.map((one) => one.estimate / one.seconds))),
    overFirst: middle(sorted(first.map((one) => one.seconds))) / median,
  };
}

function sorted(values: readonly number[]): number[] {
  return values.toSorted((one, other) => one - other);
}

function middle(values: readonly number[]): number {
  return values[Math.floor(values.length / 2)]!;
}
