import type { RankedPoints } from '@tiegel/contract';
import { bestSystems, joined } from './bestOfSystems.ts';
import { bestPoints } from './bestPoints.ts';
import { mostSystemsKept } from './grid.ts';
import { keyOf, type Ranking } from './ranking.ts';

/** Where a scorer puts the points that pass, system by system. */
export interface KeptPoints {
  /** Turns to a system; one that was left does not come again. */
  enter(system: number): void;
  /** Takes a point of the system entered. */
  offer(score: number, point: number): void;
  /** A point of this system with a key above this need not be offered. */
  worstKey(): number;
  /** What to keep, once all points were offered. */
  finish(): { best: RankedPoints; bestOfSystems: RankedPoints };
}

/** Collects what one chunk keeps. A point that is strictly worse than the cut-off is kept for its system only. */
export function keptPoints(ranking: Ranking, cutOff: number | null): KeptPoints {
  const { keep, keepPerSystem, prefer } = ranking;
  const best = bestPoints(keep, prefer);
  const bestHere = bestPoints(keepPerSystem, prefer);
  const cutOffKey = cutOff === null ? Number.POSITIVE_INFINITY : keyOf(cutOff, prefer);
  let lists: RankedPoints[] = [];
  let system = -1;

  function leave(): void {
    if (keepPerSystem === 0) return;
    const points = bestHere.take();
    if (points.length > 0) lists.push(points);
    // Whatever is not among the best systems of some is not among the best of all.
    if (lists.length >= 2 * mostSystemsKept) lists = bestSystems(lists, ranking);
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
    finish() {
      leave();
      return { best: best.take(), bestOfSystems: joined(bestSystems(lists, ranking)) };
    },
  };
}
