import { type Grid, wholeOf } from '../../grid/grid.ts';
import { pointNumbering } from '../../grid/pointNumbering.ts';
import { type Box, tightBox } from './box.ts';

/**
 * The points of a system from number `first` up to and not including `end` (null: to the last) as
 * boxes that have none in common: two at most for each element.
 */
export function rangeBoxes(grid: Grid, system: readonly number[], first: number, end: number | null): Box[] {
  const total = wholeOf(grid, system.length);
  const lowest = system.map((element) => grid.lowest[element]!);
  const highest = system.map((element) => grid.highest[element]!);
  const whole = tightBox(lowest, highest, total);
  if (whole === null) return [];
  if (first === 0 && end === null) return [whole];
  const numbering = pointNumbering(grid, system);
  const from = numbering.partsAt(first);
  const last = numbering.partsAt((end ?? numbering.count) - 1);
  const boxes: (Box | null)[] = [];

  /** Points that begin with `fixed`, whose next amount lies between two bounds. */
  function add(fixed: readonly number[], least: number, most: number): void {
    const place = fixed.length;
    const low = [...fixed, Math.max(least, lowest[place]!), ...lowest.slice(place + 1)];
    const high = [...fixed, Math.min(most, highest[place]!), ...highest.slice(place + 1)];
    boxes.push(tightBox(low, high, total));
  }

  let fork = 0;
  while (fork < system.length && from[fork] === last[fork]) fork += 1;
  if (fork === system.length) return [tightBox(from, from, total)!];
  add(from.slice(0, fork), from[fork]! + 1, last[fork]! - 1);
  for (let place = fork + 1; place < system.length; place += 1) {
    add(from.slice(0, place), from[place]! + 1, Number.POSITIVE_INFINITY);
    add(last.slice(0, place), 0, last[place]! - 1);
  }
  boxes.push(tightBox(from, from, total), tightBox(last, last, total));
  return boxes.filter((box) => box !== null);
}
