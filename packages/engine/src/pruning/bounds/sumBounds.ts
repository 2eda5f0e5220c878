import { entropyTerm, type Step } from '@tiegel/screening';
import { greatestEntropy, leastEntropy, mostForVertices } from '../boxes/boxEntropy.ts';
import { greatestSum, leastSum, sortPlaces, startOrder } from '../boxes/greedy.ts';
import { type Affine, always, leastOf, never, setFlat } from './affine.ts';

/** Bounds one step over the box at hand. */
export interface StepBound {
  /** Turns to another system; its members are in the frame. */
  enter(): void;
  bound(): void;
}

/** So many times the size of its terms may a sum of up to a hundred of them be off by rounding. */
const ROUNDING = 2 ** -46;

/** Whole numbers below it add without rounding. */
const EXACT_BELOW = 2 ** 52;

export const roundingOf = (size: number, decimal: boolean): number =>
  decimal && size < EXACT_BELOW ? 0 : size * ROUNDING;

/** A linear sum: its own affine function, with ends that are exact where its data are short decimals. */
export function linearBound(
  affine: Affine,
  to: number,
  { coefficients, divisor, decimal }: Extract<Step, { kind: 'linear' }>,
): StepBound {
  const { frame, stride, below, above } = affine;
  const weights = new Float64Array(stride);
  /** Places of the elements by rising weight, the same for all boxes of a system. */
  const order = new Int32Array(stride);
  let lacks = false;
  let largest = 0;
  let nonNegative = true;
  return {
    enter() {
      lacks = false;
      largest = 0;
      nonNegative = true;
      for (let at = 0; at < frame.elements; at += 1) {
        const weight = coefficients[frame.members[at]!]!;
        weights[at] = weight;
        if (Number.isNaN(weight)) lacks = true;
        if (!(weight >= 0)) nonNegative = false;
        largest = Math.max(largest, Math.abs(weight));
      }
      startOrder(order, 0, frame.elements);
      sortPlaces(weights, 0, order, 0, frame.elements);
    },
    bound() {
      if (lacks) {
        setFlat(affine, to, 0, 0, always);
        return;
      }
      const scale = divisor * frame.total;
      let corner = 0;
      let middle = 0;
      for (let at = 0; at < frame.elements; at += 1) {
        corner += weights[at]! * frame.low[at]!;
        middle += weights[at]! * frame.middle[at]!;
        below.slopes[to * stride + at] = weights[at]! / scale;
        above.slopes[to * stride + at] = weights[at]! / scale;
      }
      const margin = roundingOf(largest * frame.total, decimal);
      const least = corner + leastSum(weights, 0, order, 0, frame) - margin;
      affine.low[to] = (nonNegative ? Math.max(0, least) : least) / scale;
      affine.high[to] = (corner + greatestSum(weights, 0, order, 0, frame) + margin) / scale;
      affine.missing[to] = never;
      const slack = (largest / divisor) * ROUNDING;
      below.constants[to] = corner / scale - slack;
      above.constants[to] = corner / scale + slack;
      below.atMiddle[to] = below.constants[to]! + middle / scale;
      above.atMiddle[to] = above.constants[to]! + middle / scale;
    },
  };
}

/**
 * −Σ c ln c: above by tangents, below by chords. Its greatest value is exact; its least, which takes
 * longer, where that is asked for and the elements are few.
 */
export function entropyBound(affine: Affine, to: number, exactBelow: boolean): StepBound {
  const { frame, stride, below, above } = affine;
  let total = 0;
  /** −c ln c and its derivative by the part, by parts. */
  let terms = new Float64Array();
  let slopesAt = new Float64Array();
  return {
    enter() {
      if (frame.total === total) return;
      total = frame.total;
      terms = Float64Array.from({ length: total + 1 }, (_, parts) => 0 - entropyTerm(parts / total));
      slopesAt = Float64Array.from(
        { length: total + 1 },
        (_, parts) => (-Math.log(parts / total) - 1) / total,
      );
    },
    bound() {
      const { elements, low, high, middle, width } = frame;
      let [fromBelow, fromAbove, belowMiddle, aboveMiddle] = [0, 0, 0, 0];
      for (let at = 0; at < elements; at += 1) {
        const from = low[at]!;
        const chord = width[at]! > 0 ? (terms[high[at]!]! - terms[from]!) / width[at]! : 0;
        // A tangent is above everywhere, so a whole number near the middle is as good.
        const touch = from + Math.round(middle[at]!);
        const tangent = slopesAt[touch]!;
        below.slopes[to * stride + at] = chord;
        above.slopes[to * stride + at] = tangent;
        fromBelow += terms[from]!;
        fromAbove += terms[touch]! - tangent * (touch - from);
        belowMiddle += chord * middle[at]!;
        aboveMiddle += tangent * middle[at]!;
      }
      below.constants[to] = fromBelow - SLACK;
      above.constants[to] = fromAbove + SLACK;
      below.atMiddle[to] = below.constants[to]! + belowMiddle;
      above.atMiddle[to] = above.constants[to]! + aboveMiddle;
      affine.low[to] =
        exactBelow && elements <= mostForVertices
          ? leastEntropy(frame, terms)
          : Math.max(0, leastOf(affine, to));
      affine.high[to] = greatestEntropy(frame, terms);
      affine.missing[to] = never;
    },
  };
}

/** Far above the rounding of a dozen terms of at most 0.4. */
const SLACK = 2 ** -44;
