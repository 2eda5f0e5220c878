import { greatestFill, leastFill } from './fill.ts';
import type { Box } from './region.ts';

/** How exactly numbers must be squared differences to be taken for them, relative to the largest. */
const TOLERANCE = 2 ** -40;
const PIECES = 4;
const NARROWINGS = 5;

/** Numbers d on a line, by index of the element, NaN where unknown; `reach` is the greatest size among them. */
export interface Positions {
  values: Float64Array;
  reach: number;
}

/**
 * The numbers d with bᵢⱼ = (dᵢ − dⱼ)² for every pair of a symmetric matrix, if there are any:
 * the pair sum of b is then the variance of d. Recognised from the numbers alone; d is fixed up
 * to its zero and its sign. An element without values has NaN.
 */
export function positionsOf(matrix: Float64Array): Positions | null {
  const size = Math.sqrt(matrix.length);
  const between = (i: number, j: number) => matrix[i * size + j]!;
  const known = [...Array(size).keys()].filter((i) => {
    for (let j = 0; j < size; j++) if (j !== i && !Number.isNaN(between(i, j))) return true;
    return false;
  });
  const origin = known[0];
  if (origin === undefined) return null;
  const guide = known.find((i) => between(origin, i) > 0) ?? origin;
  const values = new Float64Array(size).fill(Number.NaN);
  for (const i of known) {
    const distance = Math.sqrt(between(origin, i));
    const onSide = (side: number) =>
      Math.abs((side * distance - Math.sqrt(between(origin, guide))) ** 2 - between(guide, i));
    values[i] = onSide(1) <= onSide(-1) ? distance : -distance;
  }
  const reach = known.reduce((most, i) => Math.max(most, Math.abs(values[i]!)), 0);
  const agrees = (i: number, j: number) =>
    Math.abs((values[i]! - values[j]!) ** 2 - between(i, j)) <= TOLERANCE * reach * reach;
  return known.every((i) => known.every((j) => i === j || agrees(i, j))) ? { values, reach } : null;
}

/**
 * Ends of X² times the variance of d over a box, X its total; null where an element of the box has no d.
 *
 * - Above: for any fixed m, Σ c(d − m)² is the variance plus (d̄ − m)², and linear in c: greedy.
 *   Its greatest value is a convex function of m, narrowed down by golden section.
 * - Below: where d̄ lies between p and q, (d̄ − p)(d̄ − q) ≤ 0, so the variance is at least
 *   Σ c(d − p)(d − q): greedy. The range of d̄ is cut into pieces; the least one counts.
 */
export function varianceEnds(box: Box, { values, reach }: Positions): { low: number; high: number } | null {
  const d = box.index.map((index) => values[index]!);
  if (d.some(Number.isNaN)) return null;
  const about = (p: number, q: number) => d.map((one) => (one - p) * (one - q));
  const first = leastFill(box, d) / box.total;
  const last = greatestFill(box, d) / box.total;
  const width = (last - first) / PIECES;
  let low = Number.POSITIVE_INFINITY;
  for (let piece = 0; piece < PIECES; piece++) {
    const [p, q] = [first + piece * width, piece === PIECES - 1 ? last : first + (piece + 1) * width];
    low = Math.min(low, leastFill(box, about(p, q)));
  }
  const high = leastOfConvex(first, last, (m) => greatestFill(box, about(m, m)));
  const margin = 8 * TOLERANCE * reach * reach * box.total;
  return { low: Math.max(0, low - margin) * box.total, high: (high + margin) * box.total };
}

/** The least value of a convex function that a golden section finds; any value it takes is a valid bound. */
function leastOfConvex(from: number, to: number, value: (at: number) => number): number {
  const ratio = (Math.sqrt(5) - 1) / 2;
  let [left, right] = [from, to];
  let [inner, outer] = [right - ratio * (right - left), left + ratio * (right - left)];
  let [atInner, atOuter] = [value(inner), value(outer)];
  for (let narrowing = 0; narrowing < NARROWINGS; narrowing++) {
    if (atInner <= atOuter) {
      [right, outer, atOuter] = [outer, inner, atInner];
      inner = right - ratio * (right - left);
      atInner = value(inner);
    } else {
      [left, inner, atInner] = [inner, outer, atOuter];
      outer = left + ratio * (right - left);
      atOuter = value(outer);
    }
  }
  return Math.min(atInner, atOuter);
}
