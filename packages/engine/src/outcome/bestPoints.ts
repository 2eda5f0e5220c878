import { type RankedPoints, numbersPerRankedPoint as stride } from '@tiegel/contract/terms';
import { keyOf, type Ranking, scoreOf } from '../prepared/ranking.ts';

/** The best so many of the points offered, in whatever order they come. */
export interface BestPoints {
  /** Takes a point if it is among the best so far. */
  offer(score: number, system: number, point: number): void;
  /** A point whose key is above this cannot be among the best any more. */
  worstKey(): number;
  /** Whether a point with this key or a higher one, in this system from this point on, cannot be among the best any more. */
  excludes(key: number, system: number, point: number): boolean;
  /** Gives the points, best first, and forgets them. */
  take(): RankedPoints;
}

/**
 * Keeps the best `keep` points in a heap with the worst on top: one flat array of (key, system,
 * point) that grows as it fills, so that a million points are 24 MB and no objects.
 */
export function bestPoints(keep: number, prefer: Ranking['prefer']): BestPoints {
  let heap = new Float64Array(stride * Math.min(keep, 64));
  let count = 0;

  /** Whether the point at one place is ranked behind another point. */
  function isBehind(at: number, key: number, system: number, point: number): boolean {
    const start = at * stride;
    if (heap[start] !== key) return heap[start]! > key;
    if (heap[start + 1] !== system) return heap[start + 1]! > system;
    return heap[start + 2]! > point;
  }

  function put(at: number, key: number, system: number, point: number): void {
    heap[at * stride] = key;
    heap[at * stride + 1] = system;
    heap[at * stride + 2] = point;
  }

  function copy(from: number, to: number): void {
    put(to, heap[from * stride]!, heap[from * stride + 1]!, heap[from * stride + 2]!);
  }

  function grow(): void {
    const longer = new Float64Array(stride * Math.min(keep, 2 * count));
    longer.set(heap);
    heap = longer;
  }

  function add(key: number, system: number, point: number): void {
    if (count * stride === heap.length) grow();
    let at = count;
    count += 1;
    while (at > 0) {
      const above = (at - 1) >> 1;
      if (isBehind(above, key, system, point)) break;
      copy(above, at);
      at = above;
    }
    put(at, key, system, point);
  }

  /** Puts a point in the place of the worst among the first `size`. */
  function replaceWorst(size: number, key: number, system: number, point: number): void {
    let at = 0;
    for (;;) {
      let below = 2 * at + 1;
      if (below >= size) break;
      const other = (below + 1) * stride;
      if (below + 1 < size && !isBehind(below, heap[other]!, heap[other + 1]!, heap[other + 2]!)) below += 1;
      if (!isBehind(below, key, system, point)) break;
      copy(below, at);
      at = below;
    }
    put(at, key, system, point);
  }

  return {
    offer(score, system, point) {
      const key = keyOf(score, prefer);
      if (count < keep) add(key, system, point);
      else if (keep > 0 && isBehind(0, key, system, point)) replaceWorst(count, key, system, point);
    },
    worstKey() {
      if (count < keep) return Number.POSITIVE_INFINITY;
      return keep === 0 ? Number.NEGATIVE_INFINITY : heap[0]!;
    },
    excludes(key, system, point) {
      return keep === 0 || (count === keep && !isBehind(0, key, system, point));
    },
    take() {
      for (let size = count - 1; size > 0; size -= 1) {
        const [key, system, point] = [
          heap[size * stride]!,
          heap[size * stride + 1]!,
          heap[size * stride + 2]!,
        ];
        copy(0, size);
        replaceWorst(size, key, system, point);
      }
      const sorted = heap.slice(0, count * stride);
      for (let at = 0; at < sorted.length; at += stride) sorted[at] = scoreOf(sorted[at]!, prefer);
      count = 0;
      return sorted;
    },
  };
}
