import type { Chunk } from '@tiegel/contract';
import { type Grid, planChunks } from '@tiegel/engine';
import { pointNumbering } from '../../packages/engine/src/grid/pointNumbering.ts';
import { systemNumbering } from '../../packages/engine/src/grid/systemNumbering.ts';
import type { SearchCase } from './searchCase.ts';

/** Into so many chunks a part of a system is cut. */
const piecesOfPart = 3;

/** The chunks of a case: of the whole search, or of the part that it is about. */
export function chunksOf(
  grid: Grid,
  { pointsPerChunk, part }: Pick<SearchCase, 'pointsPerChunk' | 'part'>,
): Chunk[] {
  if (part === undefined) return planChunks(grid, { pointsPerChunk, workers: 2 });
  const { system, from, until } = part;
  const lineBefore = lineStarts(grid, system);
  const inner = Array.from({ length: piecesOfPart - 1 }, (_, at) =>
    lineBefore(from + Math.floor(((at + 1) * (until - from)) / piecesOfPart)),
  );
  const ends = [...new Set([from, ...inner, until])];
  return ends.slice(1).map((end, ordinal) => {
    const start = ends[ordinal]!;
    const ofSystem = { firstSystem: system, endSystem: system + 1 };
    return { ordinal, ...ofSystem, firstPoint: start, endPoint: end, points: end - start };
  });
}

/** Finds the first point of the line that holds a point of a system, all by their numbers; behind the last point, its own number. */
export function lineStarts(grid: Grid, system: number): (point: number) => number {
  const members = systemNumbering(grid).systemAt(system);
  const { count, partsAt, numberOf } = pointNumbering(grid, members);
  const [secondLast, last] = members.slice(-2) as [number, number];
  return (point) => {
    if (point >= count) return count;
    const parts = partsAt(point);
    const both = parts.at(-2)! + parts.at(-1)!;
    const least = Math.max(grid.lowest[secondLast]!, both - grid.highest[last]!);
    return numberOf([...parts.slice(0, -2), least, both - least]);
  };
}
