import type { Chunk } from '@tiegel/contract';
import { countPoints } from '../grid/countPoints.ts';
import type { Prepared } from '../prepared/prepare.ts';
import { wholeBoxes } from '../pruning/boxes/wholeBoxes.ts';

/** Places of the grid that are sampled, at equal distances, and systems gone through at each. Neighbours are much alike: few of them at many places. */
const mostPlaces = 64;
const mostSystemsAtPlace = 4096;
/** Large systems are gone through whole at fewer places, since parts of one are scored in another way, and slower; at so few it would hang on which they are. */
const fewestPlaces = 4;
/** What is scored together. */
const together = 2;

/** Short chunks from all over a grid. */
export interface CalibrationSample {
  chunks: Chunk[];
  points: number;
}

/**
 * About so many points from each of 64 places, or as many altogether from fewer: whole systems that follow one
 * another, or the beginning of a very large one.
 */
export function calibrationSample(prepared: Prepared, pointsAtPlace: number): CalibrationSample {
  const { count } = prepared.systems;
  const { places, points } = placesOf(prepared, pointsAtPlace);
  const distance = Math.max(1, Math.ceil(count / places));
  const chunks: Chunk[] = [];
  const boxOf = wholeBoxes(prepared.grid);
  const pointsOf = (system: readonly number[]) => boxOf(system).points;
  for (let first = 0; first < count; first += distance) {
    const end = Math.min(count, first + Math.min(distance, mostSystemsAtPlace));
    const chunk = chunkFrom(prepared, pointsOf, first, end, points);
    if (chunk.points > 0) chunks.push(chunk);
  }
  return { chunks, points: chunks.reduce((sum, one) => sum + one.points, 0) };
}

/** As many places as have room for whole systems; all of them where a system is small, or too large for that. */
function placesOf({ grid, systems }: Prepared, pointsAtPlace: number): { places: number; points: number } {
  const whole = (together * Number(countPoints(grid))) / Math.max(1, systems.count);
  const places = Math.min(mostPlaces, Math.floor((mostPlaces * pointsAtPlace) / whole));
  return pointsAtPlace >= whole || places < fewestPlaces
    ? { places: mostPlaces, points: pointsAtPlace }
    : { places, points: Math.ceil(whole) };
}

/** So many points of the systems from `first` on and before `end`, whole ones, or the beginning of a very large one. */
export function sampleFrom(prepared: Prepared, first: number, end: number, points: number): Chunk {
  const boxOf = wholeBoxes(prepared.grid);
  return chunkFrom(prepared, (system) => boxOf(system).points, first, end, points);
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
