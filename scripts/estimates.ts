/**
 * `npx node scripts/estimates.ts [--rounds 24] [--seed 1] [--workers 1] [--json]`: random searches that
 * count each limit, every one estimated and then run in a database of its own; prints the estimate
 * against the seconds taken, median and worst, of those that took two seconds or more. Other work on
 * the machine lengthens the seconds, hence the estimate against the processor time, shared among the
 * workers, beside it.
 */
import { cpus, loadavg } from 'node:os';
import { parseArgs } from 'node:util';
import { type ChunkQueue, embeddedQueue } from '@tiegel/queue';
import { candidateColumns, openSearches } from '@tiegel/search';
import { openStore } from '@tiegel/store';
import { type Pick, pickFrom } from '../test/differential/pick.ts';

const { values } = parseArgs({
  options: {
    rounds: { type: 'string', default: '24' },
    seed: { type: 'string', default: '1' },
    workers: { type: 'string', default: '1' },
    json: { type: 'boolean', default: false },
  },
});
const [rounds, seed, workers] = [values.rounds, values.seed, values.workers].map(Number) as [
  number,
  number,
  number,
];
if (![rounds, seed, workers].every(Number.isSafeInteger) || rounds < 1 || workers < 1) {
  console.error(
    'Give whole numbers: npx node scripts/estimates.ts [--rounds 24] [--seed 1] [--workers 1] [--json]',
  );
  process.exit(1);
}

/** What is estimated lasts so long, s: shorter ones need not be foretold. */
const wanted = { least: 2, most: 6 };
/** Another grid is drawn so often before a question is given up. */
const mostDraws = 40;

const elements = [
  ...['Al', 'Co', 'Cr', 'Cu', 'Fe', 'Hf', 'Mn', 'Mo', 'Nb', 'Ni'],
  ...['Pd', 'Re', 'Si', 'Ta', 'Ti', 'V', 'W', 'Y', 'Zn', 'Zr'],
];
/** A limit of each with an end that moves between two values, so that more or less passes. */
const limits = [
  { quantity: 'sizeMismatch', edge: 'max', from: 3, to: 12 },
  { quantity: 'omega', edge: 'min', from: 0.5, to: 3 },
  { quantity: 'valenceElectronConcentration', edge: 'max', from: 5, to: 9 },
  { quantity: 'mixingEnthalpy', edge: 'min', from: -40, to: -5 },
  { quantity: 'density', edge: 'max', from: 6, to: 13 },
  { quantity: 'cost', edge: 'max', from: 20, to: 400 },
  { quantity: 'electronegativitySpread', edge: 'max', from: 0.1, to: 0.5 },
  { quantity: 'meltingTemperature', edge: 'min', from: 1200, to: 2400 },
  { quantity: 'singlePhaseEstimate', edge: 'min', from: 0.1, to: 0.9 },
  { quantity: 'yieldStrengthBcc', edge: 'min', from: 200, to: 1500 },
] as const;
const desirabilities = [
  { quantity: 'density', prefer: 'low', from: 2, to: 14 },
  { quantity: 'sizeMismatch', prefer: 'low', from: 0, to: 12, weight: 2 },
  { quantity: 'cost', prefer: 'low', from: 0, to: 500, shape: 2 },
  { quantity: 'meltingTemperature', prefer: 'high', from: 800, to: 3000 },
] as const;

/** A question, and its grid that may be drawn anew. */
function randomQuestion(pick: Pick): { asked: object; grid: () => object } {
  const asked = {
    name: 'a search to be estimated',
    limits: pick
      .some(limits, pick.whole(1, 6))
      .map(({ quantity, edge, from, to }) => ({ quantity, [edge]: pick.between(from, to) })),
    rank: pick.chance(0.7)
      ? [{ quantity: pick.one(desirabilities).quantity, prefer: pick.one(['high', 'low']) }]
      : pick.some(desirabilities, 3),
    keep: pick.one([100, 1000, 1000, 20_000, 200_000]),
    keepPerSystem: pick.one([0, 0, 0, 2]),
  };
  const grid = () => ({
    elements: { pool: pick.some(elements, pick.whole(7, 20)) },
    components: pick.one([4, 5, 5, 6, { min: 4, max: 5 }]),
    fractions: {
      ...{ step: pick.one([1, 1, 2, 2.5, 5]), min: pick.one([5, 5, 10]), max: pick.one([35, 40, 60]) },
      ...(pick.chance(0.3) ? { each: { Al: { max: 20 }, Fe: { min: 10 } } } : {}),
    },
  });
  return { asked, grid };
}

interface Measured {
  points: number;
  estimated: number;
  seconds: number;
  /** processor time from the request to the end of scoring, over the workers */
  processor: number;
  asked: object;
}

async function measured(number: number, queue: ChunkQueue): Promise<Measured | null> {
  const pick = pickFrom(seed * 10_007 + number);
  const { asked, grid } = randomQuestion(pick);
  const store = openStore({ file: null, columns: candidateColumns });
  // Anew for each: what one search took would be known to the next.
  const searches = await openSearches({ store, queue });
  try {
    for (let draw = 0; draw < mostDraws; draw += 1) {
      const request = { ...asked, ...grid() };
      const size = await searches.size(request).catch(() => null);
      if (!size || size.seconds! < wanted.least || size.seconds! > wanted.most) continue;
      const { id } = await searches.submit(request);
      const before = process.cpuUsage();
      const { promise: scored, resolve } = Promise.withResolvers<number>();
      const stop = searches.watch(id, ({ progress }) => {
        if (progress.points < progress.total) return;
        const { user, system } = process.cpuUsage(before);
        resolve((user + system) / 1e6 / workers);
      });
      const { seconds, state, reason } = await searches.finished(id);
      if (state !== 'done') throw new Error(`${state}: ${reason}`);
      const processor = await scored;
      stop();
      return { points: size.points, estimated: size.seconds!, seconds: seconds!, processor, asked: request };
    }
    return null;
  } finally {
    await searches.close();
    store.close();
  }
}

/** How far an estimate was off, as a factor: 1.3 for 30 % too much, and for so much too little. */
const off = (ratio: number) => Math.max(ratio, 1 / ratio);

function summary(ratios: readonly number[]): string {
  const sorted = ratios.toSorted((a, b) => a - b);
  const worst = ratios.reduce((most, one) => (off(one) > off(most) ? one : most), 1);
  const within = ratios.filter((one) => Math.abs(one - 1) <= 0.3).length;
  return `median ${sorted[sorted.length >> 1]!.toFixed(2)}, worst ${worst.toFixed(2)}, within 30 %: ${within} of ${ratios.length}`;
}

const queue = embeddedQueue({
  threadFile: new URL(import.meta.resolve('@tiegel/search/scoringThread')),
  threads: workers,
});
const all: Measured[] = [];
for (let number = 0; number < rounds; number += 1) {
  const one = await measured(number, queue);
  if (one === null) {
    console.error(`${number + 1}: no grid of a length that is worth foretelling`);
    continue;
  }
  all.push(one);
  const { points, estimated, seconds, processor } = one;
  console.error(
    `${number + 1}: ${points} points, estimated ${estimated.toFixed(2)} s, took ${seconds.toFixed(2)} s, ${processor.toFixed(2)} s of processor time`,
  );
}
await queue.close();
const long = all.filter(({ seconds }) => seconds >= 2);
if (values.json) console.log(JSON.stringify({ workers, load: loadavg()[0], searches: all }, null, 2));
else if (long.length === 0) console.log('No search took two seconds.');
else {
  console.log(
    `${long.length} searches, ${workers} workers on ${cpus().length} cores, load ${loadavg()[0]!.toFixed(1)}`,
  );
  console.log(`estimated / taken: ${summary(long.map(({ estimated, seconds }) => estimated / seconds))}`);
  console.log(
    `estimated / processor time: ${summary(long.map(({ estimated, processor }) => estimated / processor))}`,
  );
}
