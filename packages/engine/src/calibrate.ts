import type { Chunk } from '@tiegel/contract';
import { calibrationSample } from './calibrationSample.ts';
import { emptyOutcome } from './emptyOutcome.ts';
import { cutOffOf, mergeOutcomes } from './mergeOutcomes.ts';
import type { Prepared } from './prepare.ts';
import { scoreChunk } from './scoreChunk.ts';

/** Points at each place to begin with: few, for formulas that take microseconds. They grow until a round is long enough: what a chunk costs however short it is must not show. */
const fewestPoints = 1024;
const growth = 4;
const shortestRoundMs = 60;
/** How long all rounds last together, by whether the rate has settled: until the compiler has done its work it rises. */
const shortestMs = 250;
const longestMs = 400;
/** Where the sample cannot grow the grid is small, and its search takes no time however wrong the rate. */
const smallGridMs = 30;
/** A round that is not this much faster than the best before it says that the rate has settled. */
const settled = 1.05;

/**
 * How many points a second scoring takes on this very search, on one core of this machine, from a
 * sample spread over the grid: the best of some rounds, since other work only ever slows. Takes 0.3
 * to 0.5 s. Null for a grid without points, or so nearly that the sample meets none.
 */
export function calibrate(prepared: Prepared): number | null {
  const start = performance.now();
  const round = scorer(prepared);
  let sample = calibrationSample(prepared, fewestPoints);
  let enoughMs = shortestMs;
  if (sample.chunks.length === 0) return null;
  let rate = round(sample.chunks);
  for (let points = fewestPoints; (sample.points / rate) * 1000 < shortestRoundMs; points *= growth) {
    const larger = calibrationSample(prepared, points * growth);
    if (larger.points === sample.points) {
      enoughMs = smallGridMs;
      break;
    }
    sample = larger;
    rate = round(sample.chunks);
  }
  let best = rate;
  for (;;) {
    const before = best;
    best = Math.max(best, round(sample.chunks));
    const rises = best > before * settled;
    if (performance.now() - start > (rises ? longestMs : enoughMs)) return best;
  }
}

/** Scores chunks as a worker does, with the cut-off known from earlier rounds; returns points a second. */
function scorer(prepared: Prepared): (chunks: readonly Chunk[]) => number {
  const { ranking, limits, plan } = prepared;
  let cutOff: number | null = null;
  return (chunks) => {
    let outcome = emptyOutcome(limits.length, plan.specification.tally);
    const start = performance.now();
    for (const chunk of chunks) {
      outcome = mergeOutcomes(outcome, scoreChunk(prepared, chunk, { cutOff })!, ranking);
    }
    const seconds = (performance.now() - start) / 1000;
    cutOff = cutOffOf(outcome, ranking) ?? cutOff;
    return outcome.points / seconds;
  };
}
