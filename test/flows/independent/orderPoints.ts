import type { Point } from './enumerate.ts';

/**
 * The best points in order: by score, those without one last; scores that floating point alone
 * tells apart (1e-11 relative, 1e-13 near zero) are equal, and equal ones go by composition: the lists of symbols
 * first, then the amounts.
 */
export function orderPoints(points: readonly Point[], high: boolean, keep: number): Point[] {
  if (keep === 0) return [];
  const sorted = points
    .map((point) => ({ point, key: point.score === null ? Infinity : high ? -point.score : point.score }))
    .sort((left, right) => (left.key === right.key ? 0 : left.key - right.key));
  const ordered: Point[] = [];
  for (let start = 0; start < sorted.length && ordered.length < keep; ) {
    let end = start + 1;
    while (end < sorted.length && equal(sorted[end - 1]!.key, sorted[end]!.key)) end += 1;
    const tied = sorted.slice(start, end).map(({ point }) => point);
    ordered.push(...tied.sort(byComposition));
    start = end;
  }
  return ordered.slice(0, keep);
}

function equal(left: number, right: number): boolean {
  if (!Number.isFinite(left) || !Number.isFinite(right)) return left === right;
  return Math.abs(left - right) <= 1e-11 * Math.max(0.01, Math.abs(left), Math.abs(right));
}

function byComposition(left: Point, right: Point): number {
  return byLists(left.symbols, right.symbols) || byLists(left.fractions, right.fractions);
}

/** As words in a dictionary: a list comes before its extensions. */
function byLists<Entry extends string | number>(left: readonly Entry[], right: readonly Entry[]): number {
  for (let index = 0; index < Math.min(left.length, right.length); index++) {
    if (left[index]! < right[index]!) return -1;
    if (left[index]! > right[index]!) return 1;
  }
  return left.length - right.length;
}
