import type { Chunk } from '@tiegel/contract';
import { emptyOutcome } from './emptyOutcome.ts';
import { cutOffOf, mergeOutcomes } from './mergeOutcomes.ts';
import { pointNumbering } from './pointNumbering.ts';
import type { Prepared } from './prepare.ts';
import { scoreBlocks } from './scoreBlocks.ts';

/** Places of the grid that are sampled, and points and systems gone through at each. */
const places = 16;
const pointsAtPlace = 16_384;
const mostSystemsAtPlace = 4096;
/** Length of a round of measuring, and how many there are: until the compiler has done its work the rate rises. */
const roundMs = 20;
const fewestRounds = 3;
const longestMs = 400;
/** A round that is not this much faster than the best before it says that the rate has settled. */
const settled = 1.05;

/**
 * How many points a second scoring takes on this very search, on one core of this machine, from a
 * sample spread over the grid: the best of some rounds, since other work only ever slows. Takes 0.06
 * to 0.4 s. Null for a grid without points, or so nearly that the sample meets none.
 */
export function calibrate(prepared: Prepared): number | null {
  const chunks = sampleOf(prepared);
  if (chunks.length === 0) return null;
  const sample = sampleScorer(prepared, chunks);
  const end = performance.now() + longestMs;
  let best = 0;
  for (let round = 1; ; round++) {
    const rate = sample();
    const rose = rate > best * settled;
    best = Math.max(best, rate);
    if ((round >= fewestRounds && !rose) || performance.now() > end) return best;
  }
}

/** Scores on through the sample for one round; returns points a second. */
function sampleScorer(prepared: Prepared, chunks: readonly Chunk[]): () => number {
  let outcome = emptyOutcome(prepared.limits.length, prepared.plan.specification.tally);
  let turn = 0;
  return () => {
    const start = performance.now();
    let points = 0;
    for (;;) {
      const chunk = chunks[turn % chunks.length]!;
      const found = scoreBlocks(prepared, chunk, { cutOff: cutOffOf(outcome, prepared.ranking) })!;
      if (turn < chunks.length) outcome = mergeOutcomes(outcome, found, prepared.ranking);
      points += chunk.points;
      turn += 1;
      const elapsed = performance.now() - start;
      if (elapsed >= roundMs) return points / (elapsed / 1000);
    }
  };
}

/** Short chunks from places at equal distances. */
function sampleOf(prepared: Prepared): Chunk[] {
  const { count } = prepared.systems;
  const distance = Math.max(1, Math.ceil(count / places));
  const chunks: Chunk[] = [];
  for (let first = 0; first < count; first += distance) {
    const chunk = chunkFrom(prepared, first, Math.min(count, first + Math.min(distance, mostSystemsAtPlace)));
    if (chunk.points > 0) chunks.push(chunk);
  }
  return chunks;
}

/** About as many points as wanted from the system `first` on: whole systems, or the beginning of a large one. */
function chunkFrom({ grid, systems }: Prepared, first: number, end: number): Chunk {
  const whole = { ordinal: 0, firstSystem: first, firstPoint: 0, endPoint: null };
  let points = 0;
  let system = first;
  for (; system < end && points < pointsAtPlace; system += 1) {
    const here = pointNumbering(grid, systems.systemAt(system)).count;
    if (here > 2 * pointsAtPlace && points === 0) {
      return {
        ...whole,
        firstSystem: system,
        endSystem: system + 1,
        endPoint: pointsAtPlace,
        points: pointsAtPlace,
      };
    }
    if (here > 2 * pointsAtPlace) break;
    points += here;
  }
  return { ...whole, endSystem: system, points };
}
