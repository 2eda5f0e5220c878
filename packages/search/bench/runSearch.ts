import type { ChunkQueue } from '@tiegel/queue';
import { openStore } from '@tiegel/store';
import { candidateColumns, openSearches } from '../src/index.ts';
import type { Carrier } from './carriers.ts';

/** Elements of pools, in an order of no meaning. */
const elements = [
  ...['Al', 'Co', 'Cr', 'Cu', 'Fe', 'Hf', 'Mn', 'Mo', 'Nb', 'Ni', 'Pd', 'Re', 'Si', 'Ta', 'Ti'],
  ...['V', 'W', 'Y', 'Zn', 'Zr', 'Ag', 'Au', 'Ir', 'Mg', 'Pt', 'Rh', 'Ru', 'Sn'],
];
export const largestPool = elements.length;

/** All five-component systems of so many elements on a grid of some step in at.%, six limits, each counted. */
export function systemsOf(poolSize: number, step = 1): object {
  return {
    name: `scaling over ${poolSize} elements`,
    elements: { pool: elements.slice(0, poolSize) },
    components: 5,
    fractions: { step, min: 5, max: 35 },
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

/** What a search took. */
export interface Ran {
  seconds: number;
  /** estimated before it ran */
  estimate: number;
  /** which share of that time the workers scored: the rest is what carrying costs, however fast the machine is at the moment */
  busy: number;
}

/** The same queue, which tells how long its workers have scored. */
function timed(queue: ChunkQueue): { queue: ChunkQueue; scoringSeconds(): number } {
  let sum = 0;
  const onReport: ChunkQueue['onReport'] = (listener) =>
    queue.onReport((report) => {
      if (report.kind === 'done') sum += report.scoringSeconds;
      listener(report);
    });
  return { queue: { ...queue, onReport }, scoringSeconds: () => sum };
}

/** One search from its request to its end, in a database of its own. */
export async function runSearch(
  carrier: Carrier,
  request: object,
  { pointsPerChunk }: { pointsPerChunk?: number } = {},
): Promise<Ran> {
  const store = openStore({ file: null, columns: candidateColumns });
  const { queue, scoringSeconds } = timed(carrier.queue);
  const searches = await openSearches({ store, queue, ...(pointsPerChunk ? { pointsPerChunk } : {}) });
  try {
    const { seconds: estimate } = await searches.size(request);
    const { id } = await searches.submit(request);
    const { seconds, state, reason } = await searches.finished(id);
    if (state !== 'done') throw new Error(`${state}: ${reason}`);
    const busy = scoringSeconds() / (carrier.workers * seconds!);
    return { seconds: seconds!, estimate: estimate!, busy };
  } finally {
    await searches.close();
    store.close();
  }
}
