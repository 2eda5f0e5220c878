import type { Chunk } from '@tiegel/contract';
import type { Prepared } from './prepare.ts';
import { wholeBoxes } from './pruning/wholeBoxes.ts';

/** Places of the grid that are sampled, at equal distances, and systems gone through at each. Neighbours are much alike: few of them at many places. */
const places = 64;
const mostSystemsAtPlace = 4096;

/** Short chunks from all over a grid. */
export interface CalibrationSample {
  chunks: Chunk[];
  points: number;
}

/** About so many points from each place: whole systems that follow one another, or the beginning of a large one. */
export function calibrationSample(prepared: Prepared, pointsAtPlace: number): CalibrationSample {
  const { count } = prepared.systems;
  const distance = Math.max(1, Math.ceil(count / places));
  const chunks: Chunk[] = [];
  const boxOf = wholeBoxes(prepared.grid);
  const pointsOf = (system: readonly number[]) => boxOf(system).points;
  for (let first = 0; first < count; first += distance) {
    const end = Math.min(count, first + Math.min(distance, mostSystemsAtPlace));
    const chunk = chunkFrom(prepared, pointsOf, first, end, pointsAtPlace);
    if (chunk.points > 0) chunks.push(chunk);
  }
  return { chunks, points: chunks.reduce((sum, { points }) => sum + points, 0) };
}

function chunkFrom(
  { systems }: Prepared,
  pointsOf: (system: readonly number[]) => number,
  first: number,
  end: number,
  pointsAtPlace: number,
): Chunk {
  const whole = { ordinal: 0, firstSystem: first, firstPoint: 0, endPoint: null };
  let points = 0;
  let system = first;
  const members = systems.systemAt(first);
  for (; system < end && points < pointsAtPlace; system += 1, systems.advance(members)) {
    const here = pointsOf(members);
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
