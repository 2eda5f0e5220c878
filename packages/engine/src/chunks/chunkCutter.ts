import type { Chunk } from '@tiegel/contract';
import type { Grid } from '../grid/grid.ts';
import { pointNumbering } from '../grid/pointNumbering.ts';

export interface PlanOptions {
  /** How many points one chunk should hold: measured rate × the time that a chunk should take. */
  pointsPerChunk: number;
  /** How many chunks are scored at once. */
  workers: number;
}

/** A plan has about so many chunks at most. */
const mostChunks = 200_000;
/**
 * The last chunks shrink to a share of what was asked for, so that no worker waits long for another: of
 * chunks of a second to 16 ms, some times what handing one over costs (packages/queue). With many
 * workers they stay larger, for one process hands out all of them.
 */
function smallestShare(workers: number): number {
  return Math.min(1 / 4, Math.max(1 / 64, workers / 400));
}
/** A system of up to so many times the size of a chunk is not cut. */
const tolerance = 1.5;

/** Collects systems, in the order of their numbers, into chunks. */
export interface ChunkCutter {
  /** Whether so many points still fit into the chunk that is being filled. */
  fits(points: number): boolean;
  /** Adds the next systems, which fit. */
  take(systems: number, points: number): void;
  /** Adds the next system, which may be cut or begin a chunk. */
  takeSystem(system: readonly number[], points: number): void;
  /** Fills one chunk from the next systems, of one point each; says with how many. */
  takeSinglePoints(systems: number): number;
  /** The chunks, once everything was added. */
  chunks(): Chunk[];
}

/** A cutter for a grid of so many points. */
export function chunkCutter(grid: Grid, allPoints: number, options: PlanOptions): ChunkCutter {
  const fullSize = Math.max(1, options.pointsPerChunk, allPoints / mostChunks);
  const smallest = options.pointsPerChunk * smallestShare(options.workers);
  const chunks: Chunk[] = [];
  let pointsLeft = allPoints;
  let firstSystem = 0;
  let nextSystem = 0;
  let filled = 0;

  /** How many points the chunk that is being filled should hold: for one worker as many as are left, for many half of its share of them. */
  function size(): number {
    const share = pointsLeft / (2 * options.workers - 1);
    return Math.ceil(Math.min(fullSize, Math.max(smallest, share)));
  }

  function add(chunk: Omit<Chunk, 'ordinal'>): void {
    chunks.push({ ordinal: chunks.length, ...chunk });
    pointsLeft -= chunk.points;
  }

  function close(): void {
    if (filled > 0) {
      add({ firstSystem, endSystem: nextSystem, firstPoint: 0, endPoint: null, points: filled });
    }
    firstSystem = nextSystem;
    filled = 0;
  }

  function take(systems: number, points: number): void {
    nextSystem += systems;
    filled += points;
  }

  function cut(system: readonly number[], points: number): void {
    const lineBefore = lineStarts(grid, system);
    close();
    for (let from = 0; from < points; ) {
      const end = points - from <= size() * tolerance ? points : lineBefore(from, from + size());
      add({
        firstSystem: nextSystem,
        endSystem: nextSystem + 1,
        firstPoint: from,
        endPoint: from === 0 && end === points ? null : end,
        points: end - from,
      });
      from = end;
    }
    nextSystem += 1;
    firstSystem = nextSystem;
  }

  return {
    fits: (points) => points === 0 || filled + points <= size(),
    take,
    takeSystem(system, points) {
      const cuttable = !grid.wholeSystems && system.length > 2;
      if (cuttable && points > size() * tolerance) {
        cut(system, points);
      } else {
        if (filled > 0 && filled + points > size()) close();
        take(1, points);
      }
    },
    takeSinglePoints(systems) {
      const taken = Math.min(systems, size());
      take(taken, taken);
      close();
      return taken;
    },
    chunks() {
      close();
      return chunks;
    },
  };
}

/** Finds the last beginning of a line at or before `point` and behind `from`, itself a beginning; else the end of the first line. */
function lineStarts(grid: Grid, system: readonly number[]): (from: number, point: number) => number {
  const numbering = pointNumbering(grid, system);
  const [secondLast, last] = system.slice(-2) as [number, number];

  /** The line that holds a point, as the numbers of its first point and of the one behind its last. */
  function lineOf(point: number): { start: number; end: number } {
    const [amount, rest] = numbering.partsAt(point).slice(-2) as [number, number];
    const both = amount + rest;
    const least = Math.max(grid.lowest[secondLast]!, both - grid.highest[last]!);
    const most = Math.min(grid.highest[secondLast]!, both - grid.lowest[last]!);
    return { start: point - (amount - least), end: point + (most - amount) + 1 };
  }

  return (from, point) => {
    if (point >= numbering.count) return numbering.count;
    const { start, end } = lineOf(point);
    return start > from ? start : end;
  };
}
