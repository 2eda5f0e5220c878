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
/** The compiler needs the first part; the second is measured. */
const warmingMs = 30;
const measuringMs = 40;

/**
 * How many points a second scoring takes on this very search, on one core of this machine, from a
 * sample spread over the grid; takes about 0.1 s. Null for a grid without points.
 */
export function calibrate(prepared: Prepared): number | null {
  const chunks = sampleOf(prepared);
  if (chunks.length === 0) return null;
  let outcome = emptyOutcome(prepared.limits.length);
  let points = 0;
  let turn = 0;
  const start = performance.now();
  let measuredFrom = start;
  for (;;) {
    const now = performance.now();
    if (now - start < warmingMs) {
      measuredFrom = now;
      points = 0;
    } else if (points > 0 && now - measuredFrom >= measuringMs) {
      return points / ((now - measuredFrom) / 1000);
    }
    const chunk = chunks[turn % chunks.length]!;
    const found = scoreBlocks(prepared, chunk, { cutOff: cutOffOf(outcome, prepared.ranking) })!;
    if (turn < chunks.length) outcome = mergeOutcomes(outcome, found, prepared.ranking);
    points += chunk.points;
    turn += 1;
  }
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
