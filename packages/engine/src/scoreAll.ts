import type { Chunk } from '@tiegel/contract';
import { calibrationSample } from './calibrationSample.ts';
import { scoreKernel } from './kernel/scoreKernel.ts';
import type { Prepared } from './prepare.ts';
import { scorePruned } from './pruning/scorePruned.ts';
import type { Score } from './scoring.ts';

/** Places of the sample that both ways are tried on, and points at each. */
const places = 4;
const pointsAtPlace = 60_000;
/** A chunk of fewer points is not worth trying anything. */
const fewestPoints = 2_000_000;

const chosen = new WeakMap<Prepared, Score>();

/**
 * Scores a chunk of a search that counts the passes of all limits together. Leaving regions out wins
 * where few or nearly all points pass, looking at every one where limits cut through most regions:
 * both are tried on a sample, once for each search and thread, and the faster one is kept. Their
 * outcomes are equal digit for digit.
 */
export const scoreAll: Score = (prepared, chunk, options) => {
  const score = chosen.get(prepared) ?? (chunk.points < fewestPoints ? scorePruned : faster(prepared));
  return score(prepared, chunk, options);
};

function faster(prepared: Prepared): Score {
  const all = calibrationSample(prepared, pointsAtPlace).chunks;
  const sample = all.filter((_, place) => place % Math.ceil(all.length / places) === 0);
  // Once to warm up: what was never run says more of the compiler.
  const [pruned, swept] = [scorePruned, scoreKernel].map((score) =>
    Math.min(millisecondsOf(prepared, sample, score), millisecondsOf(prepared, sample, score)),
  ) as [number, number];
  const score = pruned < swept ? scorePruned : scoreKernel;
  chosen.set(prepared, score);
  return score;
}

function millisecondsOf(prepared: Prepared, sample: readonly Chunk[], score: Score): number {
  const start = performance.now();
  for (const chunk of sample) score(prepared, chunk, { cutOff: null });
  return performance.now() - start;
}
