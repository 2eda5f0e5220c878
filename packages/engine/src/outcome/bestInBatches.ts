import { type RankedPoints, numbersPerRankedPoint as stride } from '@tiegel/contract/terms';
import { keyOf, type Ranking, scoreOf } from '../prepared/ranking.ts';
import type { BestPoints } from './bestPoints.ts';

/** Room beyond the points kept, at most, before the worst are dropped together. */
const mostBeyond = 2 ** 18;
/** Room for so many points to begin with. */
const firstRoom = 4096;
/** Runs shorter than this are sorted by insertion. */
const shortRun = 12;

/**
 * Keeps the best `keep` points, many of them, as a list to which points are added until it is full;
 * then the worst are dropped in one go. A point costs a few steps where a heap of 100,000 takes
 * seventeen levels; the bound for further points is renewed less often.
 */
export function bestInBatches(keep: number, prefer: Ranking['prefer']): BestPoints {
  const capacity = keep + Math.min(keep, mostBeyond);
  let points: Float64Array<ArrayBuffer> = new Float64Array(stride * Math.min(capacity, firstRoom));
  let count = 0;
  /** The worst point of the best so far, once there are enough of them. */
  const worst = new Float64Array(stride).fill(Number.POSITIVE_INFINITY);
  let isFull = false;

  function makeRoom(): void {
    if (count === capacity) {
      moveBest(points, 0, count - 1, keep);
      count = keep;
      noteWorst();
    } else if (count * stride === points.length) {
      points = resized(points, stride * Math.min(capacity, 2 * count));
    }
  }

  function noteWorst(): void {
    let at = 0;
    for (let other = 1; other < keep; other += 1) if (isBefore(points, at, other)) at = other;
    worst.set(points.subarray(at * stride, at * stride + stride));
    isFull = true;
  }

  const isBehindWorst = (key: number, system: number, point: number): boolean => {
    if (key !== worst[0]) return key > worst[0]!;
    return system !== worst[1] ? system > worst[1]! : point >= worst[2]!;
  };

  return {
    offer(score, system, point) {
      const key = keyOf(score, prefer);
      if (isFull && isBehindWorst(key, system, point)) return;
      makeRoom();
      points[count * stride] = key;
      points[count * stride + 1] = system;
      points[count * stride + 2] = point;
      count += 1;
    },
    worstKey: () => (isFull ? worst[0]! : Number.POSITIVE_INFINITY),
    excludes: (key, system, point) => isFull && isBehindWorst(key, system, point),
    take(): RankedPoints {
      if (count > keep) moveBest(points, 0, count - 1, keep);
      count = Math.min(count, keep);
      sort(points, 0, count - 1);
      const sorted = resized(points, stride * count);
      for (let at = 0; at < sorted.length; at += stride) sorted[at] = scoreOf(sorted[at]!, prefer);
      points = new Float64Array(stride * Math.min(capacity, firstRoom));
      count = 0;
      isFull = false;
      return sorted;
    },
  };
}

/** An array made longer or shorter where it is: of a million points two copies would be 60 MB, until somebody sweeps. */
function resized(points: Float64Array<ArrayBuffer>, length: number): Float64Array<ArrayBuffer> {
  return new Float64Array(points.buffer.transfer(length * points.BYTES_PER_ELEMENT));
}

/** Whether the point at one place is ranked before that at another. */
function isBefore(points: Float64Array, one: number, other: number): boolean {
  const [left, right] = [one * stride, other * stride];
  if (points[left] !== points[right]) return points[left]! < points[right]!;
  if (points[left + 1] !== points[right + 1]) return points[left + 1]! < points[right + 1]!;
  return points[left + 2]! < points[right + 2]!;
}

function swap(points: Float64Array, one: number, other: number): void {
  for (let number = 0; number < stride; number += 1) {
    const kept = points[one * stride + number]!;
    points[one * stride + number] = points[other * stride + number]!;
    points[other * stride + number] = kept;
  }
}

/** Parts a run of at least three around its middle; returns the end of the part ranked before the rest (Hoare's partition). */
function part(points: Float64Array, first: number, last: number): number {
  const middle = (first + last) >> 1;
  if (isBefore(points, middle, first)) swap(points, middle, first);
  if (isBefore(points, last, first)) swap(points, last, first);
  if (isBefore(points, last, middle)) swap(points, last, middle);
  const [key, system, point] = [
    points[middle * stride]!,
    points[middle * stride + 1]!,
    points[middle * stride + 2]!,
  ];
  const compared = (at: number): number => {
    const start = at * stride;
    if (points[start] !== key) return points[start]! < key ? -1 : 1;
    return points[start + 1]! - system || points[start + 2]! - point;
  };
  let left = first;
  let right = last;
  for (;;) {
    while (compared(left) < 0) left += 1;
    while (compared(right) > 0) right -= 1;
    if (left >= right) return right;
    swap(points, left, right);
    left += 1;
    right -= 1;
  }
}

/** Moves the best `keep` of the points before all others. */
function moveBest(points: Float64Array, from: number, to: number, keep: number): void {
  let [first, last] = [from, to];
  while (last - first >= shortRun) {
    const end = part(points, first, last);
    if (keep <= end) last = end;
    else first = end + 1;
  }
  insert(points, first, last);
}

function sort(points: Float64Array, first: number, last: number): void {
  if (last - first < shortRun) {
    insert(points, first, last);
    return;
  }
  const end = part(points, first, last);
  sort(points, first, end);
  sort(points, end + 1, last);
}

function insert(points: Float64Array, first: number, last: number): void {
  for (let at = first + 1; at <= last; at += 1) {
    for (let place = at; place > first && isBefore(points, place, place - 1); place -= 1)
      swap(points, place, place - 1);
  }
}
