import type { Chunk, Outcome } from '@tiegel/contract';
import { scoreKernel } from '../kernel/scoreKernel.ts';
import type { Prepared } from '../prepared/prepare.ts';
import { sampleFrom } from '../rate/calibrationSample.ts';
import type { Score, ScoreOptions } from '../scoring.ts';
import { type PruningTurns, pruningTurns } from './pruningTurns.ts';
import { scorePruned } from './scorePruned.ts';

/** A chunk of fewer points tells nothing of the kernel's rate. */
const fewestPoints = 2_000_000;
/** Points that the kernel's rate is measured on. */
const samplePoints = 1_000_000;
/** After so much of the time that is left to it, it shows whether it will do. */
const earlyShare = 1 / 4;

/** What the chunks of a search have told this thread. */
interface Told {
  turns: PruningTurns;
  /** What the kernel takes for a point, ms. */
  kernelMs: number;
}

const told = new WeakMap<Prepared, Told>();

/**
 * Scores a chunk of a search that counts the passes of all limits together. Leaving regions out wins
 * where few or nearly all points pass, looking at every one where limits cut through most regions. The
 * chunks of a search tell: regions are left out for as long as the kernel would take, and what is not done by
 * then is done by the kernel, as are some chunks after it. Outcomes are equal digit for digit.
 */
export const scoreAll: Score = (prepared, chunk, options) => {
  const known = toldBy(prepared, chunk);
  if (known === null) return scorePruned(prepared, chunk, options);
  const { turns } = known;
  const kernelMs = known.kernelMs * chunk.points;
  const most = turns.mostMs(kernelMs);
  const start = performance.now();
  const outcome = most > 0 ? prunedWithin(prepared, chunk, options, most) : null;
  if (outcome === null && options.stopped?.()) return null;
  if (outcome !== null) turns.took(performance.now() - start, kernelMs);
  else if (most > 0) turns.gaveUp();
  return outcome ?? byKernel(prepared, chunk, options, known);
};

/** Null as long as there was no chunk that is worth measuring anything. */
function toldBy(prepared: Prepared, chunk: Chunk): Told | null {
  let known = told.get(prepared) ?? null;
  if (known === null && chunk.points >= fewestPoints) {
    known = { turns: pruningTurns(), kernelMs: kernelMsPerPoint(prepared, chunk) };
    told.set(prepared, known);
  }
  return known;
}

/** What the kernel takes for a point of a chunk, ms, by a sample from its middle. */
function kernelMsPerPoint(prepared: Prepared, { firstSystem, endSystem }: Chunk): number {
  // Numbers of systems may be above 2^31.
  const middle = Math.floor((firstSystem + endSystem) / 2);
  const sample = sampleFrom(prepared, middle, endSystem, samplePoints);
  const run = () => {
    const start = performance.now();
    scoreKernel(prepared, sample, { cutOff: null });
    return performance.now() - start;
  };
  return Math.min(run(), run()) / Math.max(1, sample.points);
}

/** The outcome of a chunk by the kernel, which tells its rate anew. */
function byKernel(prepared: Prepared, chunk: Chunk, options: ScoreOptions, known: Told): Outcome | null {
  const start = performance.now();
  const outcome = scoreKernel(prepared, chunk, options);
  if (outcome !== null && chunk.points >= fewestPoints) {
    known.kernelMs = (performance.now() - start) / chunk.points;
  }
  return outcome;
}

/** The outcome of a chunk; null when stopped, or where leaving regions out will hardly be done within this time. */
function prunedWithin(prepared: Prepared, chunk: Chunk, options: ScoreOptions, ms: number): Outcome | null {
  if (ms === Number.POSITIVE_INFINITY) return scorePruned(prepared, chunk, options);
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
