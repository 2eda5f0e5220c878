import type { Prepared } from '../prepared/prepare.ts';
import { scorePruned } from '../pruning/scorePruned.ts';
import { calibrate } from './calibrate.ts';

/** A search that ends within this time is simply run. */
const trialMs = 250;
/** A sample may be easier than the rest, and other work may come between: the bound is so many times what was measured. */
const caution = 5;
/** What handing out, collecting and a cold start take however little there is to do, s. */
const aside = 0.5;

/**
 * A bound, in seconds, of what a search that leaves regions out takes on so many workers like this
 * core; it is not meant to be near. Found by running the whole search, if it ends in a quarter of a
 * second; else the lesser of two: from the share of it that was decided by then, of which the rest is
 * easier, the best systems coming first; and from a sample of the grid, of which less can be left out.
 */
export function secondsAtMost(prepared: Prepared, points: number, workers: number): number {
  const start = performance.now();
  const stopped = () => performance.now() - start > trialMs;
  let share = 0;
  const progress = (decided: number) => {
    share = decided;
  };
  const { count } = prepared.systems;
  const whole = { ordinal: 0, firstSystem: 0, endSystem: count, firstPoint: 0, endPoint: null, points };
  if (scorePruned(prepared, whole, { cutOff: null, stopped, progress }) !== null) {
    return aside + (caution * (performance.now() - start)) / 1000;
  }
  const bySample = points / (calibrate(prepared) ?? 1);
  const byShare = share > 0 ? trialMs / 1000 / share : bySample;
  return aside + (caution * Math.min(bySample, byShare)) / workers;
}
