import type { Chunk, Outcome } from '@tiegel/contract';
import { sampleFrom } from './calibrationSample.ts';
import { scoreKernel } from './kernel/scoreKernel.ts';
import type { Prepared } from './prepare.ts';
import { scorePruned } from './pruning/scorePruned.ts';
import type { Score, ScoreOptions } from './scoring.ts';

/** A chunk of fewer points is not worth trying anything. */
const fewestPoints = 2_000_000;
/** Points that the kernel's rate is measured on. */
const samplePoints = 1_000_000;
/** The first time, however soon the kernel would be done: what was never run says more of the compiler. */
const leastMs = 60;
/** After so much of the time that is left to it, it shows whether it will do. */
const earlyShare = 1 / 4;

const chosen = new WeakMap<Prepared, Score>();
/** Searches that were tried, though nothing was decided. */
const tried = new WeakSet<Prepared>();

/**
 * Scores a chunk of a search that counts the passes of all limits together. Leaving regions out wins
 * where few or nearly all points pass, looking at every one where limits cut through most regions. A
 * search's first large chunk in a thread tells: regions are left out for as long as the kernel would take
 * for it, and what is not done by then is done by the kernel, from then on. Outcomes are equal digit for digit.
 */
export const scoreAll: Score = (prepared, chunk, options) => {
  const score = chosen.get(prepared);
  if (score) return score(prepared, chunk, options);
  if (chunk.points < fewestPoints) return scorePruned(prepared, chunk, options);
  const ms = kernelMs(prepared, chunk);
  const most = tried.has(prepared) ? ms : Math.max(ms, leastMs);
  tried.add(prepared);
  const start = performance.now();
  const outcome = prunedWithin(prepared, chunk, options, most);
  if (outcome === null && options.stopped?.()) return null;
  if (outcome === null) chosen.set(prepared, scoreKernel);
  else if (performance.now() - start <= ms) chosen.set(prepared, scorePruned);
  return outcome ?? scoreKernel(prepared, chunk, options);
};

/** How long the kernel takes for a chunk, by a sample from its middle. */
function kernelMs(prepared: Prepared, { firstSystem, endSystem, points }: Chunk): number {
  // Numbers of systems may be above 2^31.
  const middle = Math.floor((firstSystem + endSystem) / 2);
  const sample = sampleFrom(prepared, middle, endSystem, samplePoints);
  const run = () => {
    const start = performance.now();
    scoreKernel(prepared, sample, { cutOff: null });
    return performance.now() - start;
  };
  return (Math.min(run(), run()) * points) / Math.max(1, sample.points);
}

/** The outcome of a chunk; null when stopped, or where leaving regions out will hardly be done within this time. */
function prunedWithin(prepared: Prepared, chunk: Chunk, options: ScoreOptions, ms: number): Outcome | null {
  const start = performance.now();
  let share = 0;
  const progress = (decided: number) => {
    share = decided;
    options.progress?.(decided);
  };
  const isLate = () => {
    const elapsed = performance.now() - start;
    return elapsed > ms || (elapsed > earlyShare * ms && share > 0 && share * ms < elapsed);
  };
  const stopped = () => options.stopped?.() === true || isLate();
  return scorePruned(prepared, chunk, { ...options, progress, stopped });
}
