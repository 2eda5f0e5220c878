import type { Outcome } from '@tiegel/contract';
import { frontPoints } from '../front/frontPoints.ts';
import { keyOf, type Ranking } from '../prepared/ranking.ts';
import { bestInBatches } from './bestInBatches.ts';
import { bestSystems } from './bestOfSystems.ts';
import { bestPoints } from './bestPoints.ts';

/** A heap of more points has so many levels that dropping the worst now and then costs less. */
const mostInHeap = 4096;

/** Where a scorer puts the points that pass, system by system. */
export interface KeptPoints {
  /** Turns to a system; one that was left does not come again. */
  enter(system: number): void;
  /** Takes a point of the system entered. */
  offer(score: number, point: number): void;
  /** A point of this system with a key above this need not be offered. */
  worstKey(): number;
  /** Whether a point with this key or a higher one, in this system from this point on, need not be offered. */
  excludes(key: number, system: number, point: number): boolean;
  /**
   * Takes a point for the front, in whatever order, given its values of the front's quantities:
   * every point that passes, however it is ranked, where a front is asked for.
   */
  offerToFront(system: number, score: number, point: number, values: Float64Array): void;
  /** Learns from other chunks of the search how good a point must be to be kept, and tells them: see ScoreOptions. */
  exchange(sharedKey: Float64Array): void;
  /** What to keep, once all points were offered. */
  finish(): Pick<Outcome, 'best' | 'bestOfSystems' | 'front'>;
}

/** Collects what one chunk keeps. A point that is strictly worse than the cut-off is kept for its system only. */
export function keptPoints(ranking: Ranking, cutOff: number | null): KeptPoints {
  const { keep, keepPerSystem, prefer } = ranking;
  const best = keep > mostInHeap ? bestInBatches(keep, prefer) : bestPoints(keep, prefer);
  const bestHere = bestPoints(keepPerSystem, prefer);
  let cutOffKey = cutOff === null ? Number.POSITIVE_INFINITY : keyOf(cutOff, prefer);
  let ofSystems = new Float64Array(0);
  let length = 0;
  let system = -1;
  const front = ranking.front && frontPoints(ranking.front);

  function leave(): void {
    if (keepPerSystem === 0) return;
    const points = bestHere.take();
    if (length + points.length > ofSystems.length) makeRoom(points.length);
    ofSystems.set(points, length);
    length += points.length;
  }

  /** Drops systems that cannot be among the best of all, not being among the best so far, before growing. */
  function makeRoom(more: number): void {
    const best = bestSystems(ofSystems.subarray(0, length), ranking);
    ofSystems = new Float64Array(Math.max(1024, 2 * (best.length + more)));
    ofSystems.set(best);
    length = best.length;
  }

  return {
    enter(next) {
      if (next === system) return;
      leave();
      system = next;
    },
    offer(score, point) {
      if (keyOf(score, prefer) <= cutOffKey) best.offer(score, system, point);
      if (keepPerSystem > 0) bestHere.offer(score, system, point);
    },
    worstKey: () => Math.max(Math.min(cutOffKey, best.worstKey()), bestHere.worstKey()),
    excludes: (key, of, point) =>
      (key > cutOffKey || best.excludes(key, of, point)) && bestHere.excludes(key, of, point),
    exchange(sharedKey) {
      cutOffKey = Math.min(cutOffKey, sharedKey[0]!);
      // Two that tell at once may lose one word, which was true and is no loss.
      if (keep > 0 && best.worstKey() < cutOffKey) sharedKey[0] = best.worstKey();
    },
    offerToFront: (of, score, point, values) => front?.offer(score, of, point, values),
    finish() {
      leave();
      return {
        best: best.take(),
        bestOfSystems: bestSystems(ofSystems.subarray(0, length), ranking),
        ...(front && { front: front.finish() }),
      };
    },
  };
}
