import { type Positions, positionsOf, type Step } from '@tiegel/screening';
import { greatestSum, leastSum, sortPlaces, startOrder } from '../boxes/greedy.ts';
import { type Affine, always, greatestOf, leastOf, never, setFlat } from './affine.ts';
import { roundingOf, type StepBound } from './sumBounds.ts';

type PairStep = Extract<Step, { kind: 'pairs' }>;

/**
 * A pair sum Q = Σᵢ<ⱼ bᵢⱼ xᵢxⱼ. Where b are squared differences of some numbers d it is a variance,
 * X Σ d²x − (Σ dx)²: the square lies above its tangents and below its chord. Else, with x = corner + y,
 * Q = Q(corner) + Σ gᵢyᵢ + ½ Σ yᵢ (By)ᵢ, and (By)ᵢ lies between its greedy ends.
 */
export function pairBound(affine: Affine, to: number, step: PairStep): StepBound {
  const positions = positionsOf(step.coefficients);
  const matrix = new PairMatrix(affine, step);
  const variance = positions && varianceBound(affine, to, step, positions);
  const general = generalBound(affine, to, step, matrix);
  let lacks = false;
  let chosen = general;
  return {
    enter() {
      lacks = matrix.enter();
      if (lacks) return;
      chosen = variance?.enter() ? variance.bound : general;
    },
    bound() {
      if (lacks) setFlat(affine, to, 0, 0, always);
      else chosen();
    },
  };
}

/** The coefficients of the pairs of the system at hand, by place. */
class PairMatrix {
  readonly weights: Float64Array;
  /** Of each row the elements by rising weight, the same for all boxes of a system. */
  readonly orders: Int32Array;
  largest = 0;
  nonNegative = true;
  readonly #affine: Affine;
  readonly #coefficients: Float64Array;
  readonly #size: number;

  constructor(affine: Affine, { coefficients }: PairStep) {
    this.weights = new Float64Array(affine.stride * affine.stride);
    this.orders = new Int32Array(affine.stride * affine.stride);
    this.#affine = affine;
    this.#coefficients = coefficients;
    this.#size = Math.sqrt(coefficients.length);
  }

  /** Reads them; whether one lacks. */
  enter(): boolean {
    const { frame, stride } = this.#affine;
    this.largest = 0;
    this.nonNegative = true;
    let lacks = false;
    for (let row = 0; row < frame.elements; row += 1) {
      for (let column = 0; column < frame.elements; column += 1) {
        const weight =
          row === column ? 0 : this.#coefficients[frame.members[row]! * this.#size + frame.members[column]!]!;
        this.weights[row * stride + column] = weight;
        if (Number.isNaN(weight)) lacks = true;
        if (!(weight >= 0)) this.nonNegative = false;
        this.largest = Math.max(this.largest, Math.abs(weight));
      }
      startOrder(this.orders, row * stride, frame.elements);
      sortPlaces(this.weights, row * stride, this.orders, row * stride, frame.elements);
    }
    return lacks;
  }
}

function generalBound(
  affine: Affine,
  to: number,
  { divisor, decimal }: PairStep,
  matrix: PairMatrix,
): () => void {
  const { frame, stride, below, above } = affine;
  const { weights, orders } = matrix;
  const least = new Float64Array(stride);
  const greatest = new Float64Array(stride);
  return () => {
    const { elements, low, total, middle } = frame;
    const scale = divisor * total * total;
    let corner = 0;
    for (let row = 0; row < elements; row += 1) {
      let gradient = 0;
      for (let column = 0; column < elements; column += 1) {
        gradient += weights[row * stride + column]! * low[column]!;
      }
      corner += (gradient * low[row]!) / 2;
      const own = row * stride;
      least[row] = gradient + leastSum(weights, own, orders, own, frame) / 2;
      greatest[row] = gradient + greatestSum(weights, own, orders, own, frame) / 2;
    }
    const size = (matrix.largest * total * total) / 2;
    const margin = roundingOf(size, decimal);
    // The affine functions have these slopes, and so these orders, too.
    const start = to * stride;
    sortPlaces(least, 0, below.orders, start, elements);
    sortPlaces(greatest, 0, above.orders, start, elements);
    const from = corner + leastSum(least, 0, below.orders, start, frame) - margin;
    affine.low[to] = (matrix.nonNegative ? Math.max(0, from) : from) / scale;
    affine.high[to] = (corner + greatestSum(greatest, 0, above.orders, start, frame) + margin) / scale;
    affine.missing[to] = never;
    const slack = roundingOf(size, false) / scale;
    below.constants[to] = corner / scale - slack;
    above.constants[to] = corner / scale + slack;
    let [belowMiddle, aboveMiddle] = [below.constants[to]!, above.constants[to]!];
    for (let at = 0; at < elements; at += 1) {
      below.slopes[start + at] = least[at]! / scale;
      above.slopes[start + at] = greatest[at]! / scale;
      belowMiddle += (least[at]! / scale) * middle[at]!;
      aboveMiddle += (greatest[at]! / scale) * middle[at]!;
    }
    below.atMiddle[to] = belowMiddle;
    above.atMiddle[to] = aboveMiddle;
  };
}

/** How exactly positionsOf finds its numbers, relative to the square of the largest, some terms together. */
const POSITION_SLACK = 2 ** -36;

function varianceBound(affine: Affine, to: number, { divisor }: PairStep, { values, reach }: Positions) {
  const { frame, stride, below, above } = affine;
  const own = new Float64Array(stride);
  const shifted = new Float64Array(stride);
  /** Of the numbers, and of their distances from any mean. */
  const order = new Int32Array(stride);
  return {
    /** Whether every element of the system has a number. */
    enter(): boolean {
      let known = true;
      for (let at = 0; at < frame.elements; at += 1) {
        own[at] = values[frame.members[at]!]!;
        if (Number.isNaN(own[at])) known = false;
      }
      startOrder(order, 0, frame.elements);
      sortPlaces(own, 0, order, 0, frame.elements);
      return known;
    },
    bound(): void {
      const { elements, low, total, middle } = frame;
      let mean = 0;
      for (let at = 0; at < elements; at += 1) mean += own[at]! * (low[at]! + middle[at]!);
      mean /= total;
      // Σ dx at the corner, and X Σ d²x there, with d counted from the mean in the middle.
      let [sum, squares] = [0, 0];
      for (let at = 0; at < elements; at += 1) {
        const one = own[at]! - mean;
        shifted[at] = one;
        sum += one * low[at]!;
        squares += one * one * low[at]!;
      }
      const from = sum + leastSum(shifted, 0, order, 0, frame);
      const until = sum + greatestSum(shifted, 0, order, 0, frame);
      const scale = divisor * total * total;
      const slack = (POSITION_SLACK * reach * reach * total * total) / scale;
      // (Σ dx)² ≥ 0 is its tangent in the middle; below (p + q) Σ dx − pq is its chord.
      const chord = from + until;
      below.constants[to] = (total * squares - chord * sum + from * until) / scale - slack;
      above.constants[to] = (total * squares) / scale + slack;
      let [belowMiddle, aboveMiddle] = [below.constants[to]!, above.constants[to]!];
      for (let at = 0; at < elements; at += 1) {
        const one = shifted[at]!;
        const slopeAbove = (total * one * one) / scale;
        const slopeBelow = slopeAbove - (chord * one) / scale;
        below.slopes[to * stride + at] = slopeBelow;
        above.slopes[to * stride + at] = slopeAbove;
        belowMiddle += slopeBelow * middle[at]!;
        aboveMiddle += slopeAbove * middle[at]!;
      }
      below.atMiddle[to] = belowMiddle;
      above.atMiddle[to] = aboveMiddle;
      affine.low[to] = Math.max(0, leastOf(affine, to) - slack);
      affine.high[to] = greatestOf(affine, to) + slack;
      affine.missing[to] = never;
    },
  };
}
