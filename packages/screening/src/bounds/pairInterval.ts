import type { Step } from '../binding/program.ts';
import { greatestFill, leastFill } from './fill.ts';
import { eitherMissing, type Interval, type Missing, setInterval } from './interval.ts';
import { type Box, boxFromCorner, lowerCorner } from './region.ts';
import { sumMargin } from './sumMargin.ts';
import { positionsOf, varianceEnds } from './variance.ts';

type Matrix = number[][];
type Fill = typeof greatestFill;

/**
 * The interval of a pair sum Q over a box. Compositions that hold a pair without a value have no
 * sum; in all others such a pair adds nothing, so it counts as 0.
 *
 * With x = corner + y, Q(x) = Q(corner) + Σ gᵢyᵢ + Q(y), where gᵢ = Σⱼ bᵢⱼ cornerⱼ, and
 * Q(y) = ½ Σ yᵢ (Σⱼ bᵢⱼ yⱼ) ≤ ½ Σ yᵢ hᵢ with hᵢ the greatest of Σⱼ bᵢⱼ yⱼ: greedy per row, then
 * greedy again. The error shrinks with the square of the region. A sum of squared differences is
 * a variance, which has tighter ends of its own.
 */
export function pairInterval({
  coefficients,
  divisor,
  decimal,
}: Extract<Step, { kind: 'pairs' }>): (box: Box, into: Interval) => void {
  const size = Math.sqrt(coefficients.length);
  const positions = positionsOf(coefficients);
  return (box, into) => {
    const matrix = box.index.map((row) => box.index.map((column) => coefficients[row * size + column]!));
    const missing = missingPairs(matrix, box);
    if (missing === 'always') return setInterval(into, Number.NaN, Number.NaN, missing);
    const { low, high } = (positions && varianceEnds(box, positions)) ?? quadraticEnds(matrix, box, decimal);
    const scale = divisor * box.total * box.total;
    setInterval(into, low / scale, high / scale, missing);
  };
}

function quadraticEnds(matrix: Matrix, box: Box, decimal: boolean): { low: number; high: number } {
  const known = matrix.map((row) => row.map((b) => (Number.isNaN(b) ? 0 : b)));
  const margin = sumMargin((largestSize(known) * box.total * box.total) / 2, decimal);
  const low = quadraticEnd(known, box, leastFill) - margin;
  const nonNegative = known.every((row) => row.every((b) => b >= 0));
  return {
    low: nonNegative ? Math.max(0, low) : low,
    high: quadraticEnd(known, box, greatestFill) + margin,
  };
}

/** The greatest or least of a pair sum, by the fill of that direction. */
function quadraticEnd(matrix: Matrix, box: Box, fill: Fill): number {
  const corner = lowerCorner(box);
  const rest = boxFromCorner(box);
  const gradient = matrix.map((row) => sumOfProducts(row, corner));
  const rates = matrix.map((row, at) => gradient[at]! + fill(rest, row) / 2);
  return sumOfProducts(gradient, corner) / 2 + fill(rest, rates);
}

/** Whether compositions of the box hold a pair without a value. */
function missingPairs(matrix: Matrix, box: Box): Missing {
  let missing: Missing = 'never';
  for (let i = 1; i < matrix.length; i++) {
    for (let j = 0; j < i; j++) {
      if (!Number.isNaN(matrix[i]![j]!)) continue;
      const optional = Number(box.optional[i]!) + Number(box.optional[j]!);
      if (optional === 0) return 'always';
      if (optional <= box.mostOptional) missing = eitherMissing(missing, 'sometimes');
    }
  }
  return missing;
}

function sumOfProducts(left: readonly number[], right: readonly number[]): number {
  let sum = 0;
  for (let at = 0; at < left.length; at++) sum += left[at]! * right[at]!;
  return sum;
}

function largestSize(matrix: Matrix): number {
  let largest = 0;
  for (const row of matrix) for (const b of row) largest = Math.max(largest, Math.abs(b));
  return largest;
}
