import { completionsBefore, lastCompletions } from './completions.ts';
import type { Grid } from './grid.ts';
import { systemNumbering } from './systemNumbering.ts';

/**
 * All points of a grid under one number, from 0 to count − 1: every system has as many numbers as
 * it has points. The order is not that of candidates.
 */
export interface GridPoints {
  /** Exact below 2^53; above, a rounded number that must not be drawn from. */
  count: number;
  /** The elements of a point (places in the pool, ascending) and their amounts in parts; throws RangeError for a number that does not exist. */
  at(number: number): { members: number[]; parts: number[] };
}

/**
 * Numbers the points of a grid. Preparing takes (elements × components × steps) steps; finding a
 * point takes a step for each element of the pool and each part. Nothing is visited on the way,
 * so that a grid of 10^13 points is as quick as one of a thousand.
 */
export function gridPoints(grid: Grid): GridPoints {
  return grid.total === null ? systemsAsPoints(grid) : pointsByCompletions(grid, grid.total);
}

/** On the equimolar grid a system is a point. */
function systemsAsPoints(grid: Grid): GridPoints {
  const systems = systemNumbering(grid);
  return {
    count: systems.count,
    at(number) {
      const members = systems.systemAt(number);
      return { members, parts: members.map(() => 1) };
    },
  };
}

/** At each element of the pool: first the points without it, then those with its least amount, and so on. */
function pointsByCompletions(grid: Grid, total: number): GridPoints {
  const layers = [lastCompletions(grid, total)];
  for (let place = grid.symbols.length - 1; place >= 0; place -= 1) {
    layers.unshift(completionsBefore(grid, place, layers[0]!));
  }
  const ways = (place: number, chosen: number, left: number): number => layers[place]![chosen]?.[left] ?? 0;
  const count = ways(0, 0, total);

  return {
    count,
    at(number) {
      if (!(number >= 0 && number < count)) throw new RangeError(`There is no point ${number}.`);
      const members: number[] = [];
      const parts: number[] = [];
      let before = number;
      let left = total;
      for (let place = 0; place < grid.symbols.length; place += 1) {
        const without = grid.required[place] ? 0 : ways(place + 1, members.length, left);
        if (before < without) continue;
        before -= without;
        let amount = grid.lowest[place]!;
        for (;;) {
          const within = ways(place + 1, members.length + 1, left - amount);
          if (before < within) break;
          before -= within;
          amount += 1;
        }
        members.push(place);
        parts.push(amount);
        left -= amount;
      }
      return { members, parts };
    },
  };
}
