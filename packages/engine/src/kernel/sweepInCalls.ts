import { type Box, pointsIn, tightBox } from '../pruning/boxes/box.ts';
import { pointsPerCall } from './layout.ts';

/**
 * Hands a box on in slices of no more points than a call of a kernel may walk, in the order of their
 * numbers. Returns the points of all, null as soon as a slice is answered so.
 * @param place of the first element that is not held to one amount yet
 */
export function sweepInCalls(box: Box, sweep: (slice: Box) => number | null, place = 0): number | null {
  if (place >= box.low.length - 2 || fitsInCall(box)) return sweep(box);
  let points = 0;
  for (let parts = box.low[place]!; parts <= box.high[place]!; parts += 1) {
    const [low, high] = [box.low.slice(), box.high.slice()];
    low[place] = parts;
    high[place] = parts;
    const slice = tightBox(low, high, box.total);
    const here = slice === null ? 0 : sweepInCalls(slice, sweep, place + 1);
    if (here === null) return null;
    points += here;
  }
  return points;
}

/** Whether a box has no more points than a call may; counted only where its free amounts leave that open. */
function fitsInCall(box: Box): boolean {
  let most = 1;
  for (let at = 0; at < box.low.length - 1; at += 1) most *= box.high[at]! - box.low[at]! + 1;
  return most <= pointsPerCall || pointsIn(box) <= pointsPerCall;
}
