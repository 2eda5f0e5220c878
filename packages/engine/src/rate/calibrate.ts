import type { Chunk } from '@tiegel/contract';
import { type Outcome, numbersPerRankedPoint as stride } from '@tiegel/contract/terms';
import { countPoints } from '../grid/countPoints.ts';
import { emptyOutcome } from '../outcome/emptyOutcome.ts';
import { addOutcome } from '../outcome/mergeOutcomes.ts';
import type { Prepared } from '../prepared/prepare.ts';
import { scoreChunk } from '../scoreChunk.ts';
import { calibrationSample } from './calibrationSample.ts';

/** Points at each place to begin with: few, for formulas that take microseconds. They grow until a round is long enough: what a chunk costs however short it is must not show. */
const fewestPoints = 256;
const mostGrowth = 4;
const leastGrowth = 1.5;
const shortestRoundMs = 60;
/** How long all rounds last together, by whether the rate has settled: until the compiler has done its work it rises. */
const shortestMs = 250;
const longestMs = 400;
/** Where the sample cannot grow the grid is small, and its search takes no time however wrong the rate. */
const smallGridMs = 30;
/** On a machine that does much else the clock on the wall ends it, ms. */
const mostWallMs = 1000;
/** For a rough rate the shortest round, and how long all of them last at most. */
const roughRoundMs = 15;
const roughMs = 60;
/** Processor time comes in steps of up to 4 ms: where it is few of them, one may be missing, but never beyond the clock on the wall. */
const stepMs = 4;
const someStepsMs = 5 * stepMs;
/** How long a worker takes for a chunk, as packages/search cuts them, s. */
const chunkSeconds = 1;
/** Earlier ones still pay for the compiler. */
const lastRounds = 3;
/** A round that is not this much faster than the best before it says that the rate has settled. */
const settled = 1.05;

/**
 * How many points a second scoring takes on this very search, on one core of this machine, from a
 * sample spread over the grid: the median of the last rounds, since a core is slower and quicker by turns. Takes 0.3
 * to 0.5 s. Null for a grid without points, or so nearly that the sample meets none.
 *
 * @param now milliseconds; best those of this thread's processor time, which other work on the
 *   machine hardly changes, where a program can read them
 */
export function calibrate(prepared: Prepared, now: () => number = () => performance.now()): number | null {
  return rateOf(prepared, now, false);
}

/**
 * As calibrate, in some 0.1 s: some times too low perhaps, since what the compiler has not done
 * yet is in it. Enough to cut a short search into chunks, and no estimate.
 */
export function roughRate(prepared: Prepared, now: () => number = () => performance.now()): number | null {
  return rateOf(prepared, now, true);
}

const medianOf = (rates: readonly number[]): number =>
  rates.toSorted((one, other) => one - other)[rates.length >> 1]!;

function rateOf(prepared: Prepared, now: () => number, isRough: boolean): number | null {
  let start = now();
  const wallStart = performance.now();
  const isOver = (ms: number) => now() - start > ms || performance.now() - wallStart > mostWallMs;
  const round = scorer(prepared, now);
  // Twice, for the first time may make what the search needs once.
  const twice = (chunks: readonly Chunk[]) => Math.max(round(chunks), round(chunks));
  let sample = calibrationSample(prepared, fewestPoints);
  let enoughMs = shortestMs;
  if (sample.chunks.length === 0) return null;
  let best = twice(sample.chunks);
  // Most of a rough measurement would be what the first round makes once.
  if (isRough) start = now();
  const roundMs = isRough ? roughRoundMs : shortestRoundMs;
  const mostMs = isRough ? roughMs : longestMs;
  const least = isRough ? mostGrowth : leastGrowth;
  const lasted = () => (sample.points / best) * 1000;
  for (let points = fewestPoints; lasted() < roundMs; ) {
    points = Math.ceil(points * Math.min(mostGrowth, Math.max(least, (1.2 * roundMs) / lasted())));
    const larger = calibrationSample(prepared, points);
    if (larger.points === sample.points) enoughMs = smallGridMs;
    if (larger.points === sample.points || isOver(mostMs)) break;
    sample = larger;
    best = twice(sample.chunks);
  }
  const rates = [best];
  while (!isRough) {
    const before = best;
    const rate = round(sample.chunks);
    rates.push(rate);
    best = Math.max(best, rate);
    if (isOver(best > before * settled ? longestMs : enoughMs)) break;
  }
  return medianOf(rates.slice(-lastRounds));
}

/** Scores chunks as a worker does, with a cut-off known from earlier rounds; returns points a second of scoring, merging apart. */
function scorer(prepared: Prepared, now: () => number): (chunks: readonly Chunk[]) => number {
  const { limits, plan, ranking } = prepared;
  const all = Number(countPoints(prepared.grid));
  let cutOff: number | null = null;
  return (chunks) => {
    let outcome = emptyOutcome(limits.length, plan.specification.tally);
    let [milliseconds, wallMs] = [0, 0];
    for (const chunk of chunks) {
      const [start, wallStart] = [now(), performance.now()];
      const found = scoreChunk(prepared, chunk, { cutOff })!;
      milliseconds += now() - start;
      wallMs += performance.now() - wallStart;
      outcome = addOutcome(outcome, found, ranking);
    }
    const isShort = milliseconds < someStepsMs;
    const counted = isShort ? Math.min(milliseconds + stepMs, Math.max(wallMs, 1e-3)) : milliseconds;
    const rate = outcome.points / (counted / 1000);
    cutOff = cutOffAt(outcome, keptShare(ranking.keep, all, all / (rate * chunkSeconds))) ?? cutOff;
    return rate;
  };
}

/**
 * Of all points of a search, the share that is kept for a while. Of those that were gone through so
 * far the best `keep` are; that is a share of keep / n of the n-th point, which costs least, and of
 * the n-th chunk, which costs most: between both lies what keeping costs.
 */
function keptShare(keep: number, points: number, chunks: number): number {
  if (keep === 0 || keep >= points) return 1;
  const times = 1 + (Math.log(points / keep) + Math.log(Math.max(1, chunks))) / 2;
  return Math.min(1, (keep / points) * times);
}

/** The score that such a share of a sample reaches: how good a point must be, on average over the search. Null where too few pass. */
function cutOffAt({ best, points }: Outcome, share: number): number | null {
  const score = best[stride * Math.max(0, Math.ceil(points * share) - 1)];
  return score === undefined || Number.isNaN(score) ? null : score;
}
