import { greatestSum, leastSum, sortPlaces, startOrder } from '../boxes/greedy.ts';

/** Whether a value lacks: at no point of a box, perhaps at some, at every one. */
export const never = 0;
export const sometimes = 1;
export const always = 2;

/** So many times its size may a bound be off by rounding, its own and that of the value that it bounds. */
const ROUNDING = 2 ** -44;
/** And far more than what is next to nothing is rounded, which goes with no size. */
export const LEAST = 2 ** -1000;
/** What a coefficient that is next to nothing is rounded by comes to less than that as long as it is multiplied by less than this. */
export const LARGE = 2 ** 70;

/** The box at hand, counted from its lower corner: 0 ≤ yᵢ ≤ widthᵢ and Σ yᵢ = rest. */
interface Frame {
  /** Elements of the system. */
  elements: number;
  /** Their places in the pool, ascending. */
  members: readonly number[];
  low: readonly number[];
  high: readonly number[];
  total: number;
  width: Float64Array;
  rest: number;
  /** A point in the middle of the box, not a whole one: each element has the same share of its width. */
  middle: Float64Array;
}

/** One affine function for each step: constant + Σ slopeᵢ yᵢ, and its value in the middle. */
interface Sides {
  constants: Float64Array;
  /** By step and element. */
  slopes: Float64Array;
  atMiddle: Float64Array;
  /** By step: the elements by rising slope, as they were sorted last. */
  orders: Int32Array;
}

/**
 * What the steps of a program may be over a box: for each step an affine function `below` and one
 * `above` all values that an evaluator computes there, and the ends of those values. Affine
 * functions of two steps cancel where the steps vary together, which intervals cannot know: their
 * error shrinks with the square of the box.
 */
export interface Affine {
  frame: Frame;
  /** Numbers for each step in `slopes`. */
  stride: number;
  below: Sides;
  above: Sides;
  low: Float64Array;
  high: Float64Array;
  missing: Uint8Array;
}

/** Room for so many steps over boxes of systems of up to so many elements. */
export function newAffine(steps: number, mostElements: number): Affine {
  const sides = (): Sides => ({
    constants: new Float64Array(steps),
    slopes: new Float64Array(steps * mostElements),
    atMiddle: new Float64Array(steps),
    orders: new Int32Array(steps * mostElements),
  });
  return {
    frame: {
      ...{ elements: 0, members: [], low: [], high: [], total: 1, rest: 0 },
      width: new Float64Array(mostElements),
      middle: new Float64Array(mostElements),
    },
    stride: mostElements,
    below: sides(),
    above: sides(),
    low: new Float64Array(steps),
    high: new Float64Array(steps),
    missing: new Uint8Array(steps),
  };
}

/** Turns to a system: its elements' places in the pool, ascending, and the parts that make its whole. */
export function enterSystem(
  { frame, stride, below, above }: Affine,
  members: readonly number[],
  total: number,
): void {
  if (members.length !== frame.elements) {
    for (const { orders } of [below, above]) {
      for (let start = 0; start < orders.length; start += stride) startOrder(orders, start, members.length);
    }
  }
  frame.members = members;
  frame.elements = members.length;
  frame.total = total;
}

/** Whether ends lie a finite number apart. */
export const isFinitePair = (low: number, high: number): boolean => high - low < Number.POSITIVE_INFINITY;

/** A step of which only the ends are known. No number between them means that it has no value. */
export function setFlat(affine: Affine, to: number, low: number, high: number, missing: number): void {
  const none = missing === always || !(low <= high);
  affine.low[to] = none ? Number.POSITIVE_INFINITY : low;
  affine.high[to] = none ? Number.NEGATIVE_INFINITY : high;
  affine.missing[to] = none ? always : missing;
  flatten(affine, affine.below, to, affine.low[to]!);
  flatten(affine, affine.above, to, affine.high[to]!);
}

function flatten({ frame, stride }: Affine, side: Sides, to: number, value: number): void {
  side.constants[to] = value;
  side.atMiddle[to] = value;
  for (let at = to * stride; at < to * stride + frame.elements; at += 1) side.slopes[at] = 0;
}

/** A step that equals another. */
export function copyStep(affine: Affine, to: number, of: number, missing: number): void {
  const { stride, frame, below, above } = affine;
  for (const { constants, slopes, atMiddle } of [below, above]) {
    constants[to] = constants[of]!;
    atMiddle[to] = atMiddle[of]!;
    for (let at = 0; at < frame.elements; at += 1) slopes[to * stride + at] = slopes[of * stride + at]!;
  }
  affine.low[to] = affine.low[of]!;
  affine.high[to] = affine.high[of]!;
  affine.missing[to] = missing;
}

/** What constant + left · (step a) + right · (step b) is at most (or, above, at least) in the middle, by the bounds of a and b. */
export function middleOf(
  { below, above }: Affine,
  isBelow: boolean,
  constant: number,
  left: number,
  a: number,
  right: number,
  b: number,
): number {
  const ofLeft = left >= 0 === isBelow ? below : above;
  const ofRight = right >= 0 === isBelow ? below : above;
  return (
    constant +
    (left === 0 ? 0 : left * ofLeft.atMiddle[a]!) +
    (right === 0 ? 0 : right * ofRight.atMiddle[b]!)
  );
}

/**
 * Makes constant + left · (step a) + right · (step b) the affine function below a step, or above
 * it; where that leaves what a double holds, one that says nothing. The roundings of this, and of
 * what is bounded, are allowed for.
 */
export function combine(
  affine: Affine,
  isBelow: boolean,
  to: number,
  constant: number,
  left: number,
  a: number,
  right: number,
  b: number,
): void {
  const { frame, stride, below, above } = affine;
  const side = isBelow ? below : above;
  const ofLeft = left >= 0 === isBelow ? below : above;
  const ofRight = right >= 0 === isBelow ? below : above;
  const { slopes } = side;
  const [leftPart, rightPart] = [
    left === 0 ? 0 : left * ofLeft.constants[a]!,
    right === 0 ? 0 : right * ofRight.constants[b]!,
  ];
  let size = Math.abs(constant) + Math.abs(leftPart) + Math.abs(rightPart);
  let atMiddle = 0;
  const { elements, width, middle } = frame;
  for (let at = 0; at < elements; at += 1) {
    const one = left === 0 ? 0 : left * ofLeft.slopes[a * stride + at]!;
    const other = right === 0 ? 0 : right * ofRight.slopes[b * stride + at]!;
    slopes[to * stride + at] = one + other;
    size += (Math.abs(one) + Math.abs(other)) * width[at]!;
    atMiddle += (one + other) * middle[at]!;
  }
  if (!(size < Number.POSITIVE_INFINITY)) {
    flatten(affine, side, to, isBelow ? Number.NEGATIVE_INFINITY : Number.POSITIVE_INFINITY);
    return;
  }
  const slack = ROUNDING * size + LEAST;
  side.constants[to] = constant + leftPart + rightPart + (isBelow ? -slack : slack);
  side.atMiddle[to] = side.constants[to]! + atMiddle;
}

/**
 * Settles a step whose affine functions stand: its ends are the narrower ones of the interval
 * given and of the affine functions, and an affine function that is no help in the middle of the
 * box gives way to its end.
 */
export function settle(affine: Affine, to: number, low: number, high: number, missing: number): void {
  if (missing === always || !(low <= high)) {
    setFlat(affine, to, low, high, always);
    return;
  }
  const { below, above } = affine;
  const least = leastOf(affine, to);
  const greatest = greatestOf(affine, to);
  const from = Math.max(least, low);
  const until = Math.min(greatest, high);
  // Ends that cross would say that there is no value at all; roundings aside they do not.
  const crossed = from > until;
  affine.low[to] = crossed ? low : from;
  affine.high[to] = crossed ? high : until;
  affine.missing[to] = missing;
  if (!(below.atMiddle[to]! > affine.low[to]!)) flatten(affine, below, to, affine.low[to]!);
  if (!(above.atMiddle[to]! < affine.high[to]!)) flatten(affine, above, to, affine.high[to]!);
}

/** The least value over the box of the affine function below a step. */
export function leastOf({ frame, stride, below }: Affine, step: number): number {
  const { constants, slopes, orders } = below;
  const start = step * stride;
  sortPlaces(slopes, start, orders, start, frame.elements);
  return constants[step]! + leastSum(slopes, start, orders, start, frame);
}

/** The greatest value over the box of the affine function above a step. */
export function greatestOf({ frame, stride, above }: Affine, step: number): number {
  const { constants, slopes, orders } = above;
  const start = step * stride;
  sortPlaces(slopes, start, orders, start, frame.elements);
  return constants[step]! + greatestSum(slopes, start, orders, start, frame);
}
