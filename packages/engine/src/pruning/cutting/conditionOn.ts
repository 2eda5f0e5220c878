import type { Step } from '@tiegel/screening';
import { type Affine, LARGE, LEAST, never } from '../bounds/affine.ts';

/** Far more, of its size, than what is added up here is rounded. */
const ROUNDING = 2 ** -44;
/** Far more than one operation of the evaluator rounds, and than exp and ln are off, which are not promised to round correctly. */
const EASED = 2 ** -48;
const CURVED = 2 ** -44;

/** What a step must be: at most (1) or at least (−1) a value. */
interface Demand {
  step: number;
  side: 1 | -1;
  value: number;
}

/**
 * What the points y of a box must meet where a step is at most (1) or at least (−1) a value:
 * constant + Σ slopeᵢ yᵢ ≤ 0. Writes the slopes from a place on and returns the constant, −Infinity
 * where nothing follows. The step and those behind it were bounded for the box.
 *
 * A bound of a quotient or a root holds for all its values, and is sharp for few of them; here only
 * one value counts. So the demand is taken back to the operands first: e^a ≤ v is a ≤ ln v, √a ≤ v is
 * a ≤ v², a/b ≤ v is a − vb ≤ 0, and √a/b ≤ v is a − v²b² ≤ 0. What is rounded eases the demand.
 */
export function conditionOn(
  affine: Affine,
  steps: readonly Step[],
  step: number,
  side: 1 | -1,
  value: number,
  slopes: Float64Array,
  start: number,
): number {
  const demand: Demand = { step, side, value };
  while (takeBack(affine, steps, demand));
  const last = steps[demand.step]!;
  const sum = affineSum(affine, slopes, start);
  if (last.kind === 'divide') ofQuotient(affine, steps, last, demand, sum);
  else {
    sum.add(demand.side, demand.step);
    sum.plus(-demand.side * demand.value);
  }
  return sum.constant();
}

/** Replaces a demand by one on an operand of the step; false where none follows. */
function takeBack({ low, high, missing }: Affine, steps: readonly Step[], demand: Demand): boolean {
  const { step: number, side, value } = demand;
  const step = steps[number]!;
  /** The value that a step always has; NaN where it varies. */
  const fixed = (one: number) => (low[one] === high[one] && missing[one] === never ? low[one]! : Number.NaN);
  /** Goes on with an operand that must be at most, or at least, a value, eased by a share and a difference. */
  const goOn = (operand: number, newSide: 1 | -1, newValue: number, difference = 0): boolean => {
    const eased = newValue + newSide * (Math.abs(newValue) * EASED + difference + Number.MIN_VALUE);
    if (!Number.isFinite(eased)) return false;
    demand.step = operand;
    demand.side = newSide;
    demand.value = eased;
    return true;
  };
  const flipped = (factor: number): 1 | -1 => (factor > 0 ? side : side === 1 ? -1 : 1);
  switch (step.kind) {
    case 'negate':
      return goOn(step.of, flipped(-1), -value);
    case 'multiply': {
      const [left, right] = [fixed(step.left), fixed(step.right)];
      if (Number.isNaN(left) === Number.isNaN(right)) return false;
      const factor = Number.isNaN(left) ? right : left;
      if (factor === 0) return false;
      // What a product rounds to next to nothing, and to 0, may be any share of it.
      const eased = value + side * Number.MIN_VALUE;
      return goOn(Number.isNaN(left) ? step.left : step.right, flipped(factor), eased / factor);
    }
    case 'add':
    case 'subtract': {
      const sign = step.kind === 'add' ? 1 : -1;
      const [left, right] = [fixed(step.left), fixed(step.right)];
      if (Number.isNaN(left) === Number.isNaN(right)) return false;
      const size = EASED * (Math.abs(value) + Math.abs(Number.isNaN(left) ? right : left));
      if (Number.isNaN(left)) return goOn(step.left, side, value - sign * right, size);
      return goOn(step.right, flipped(sign), sign * (value - left), size);
    }
    case 'squareRoot':
      return value > 0 && goOn(step.of, side, value * value);
    case 'exponential':
      // What is next to nothing has few digits, and says little of its logarithm.
      return value > LEAST && goOn(step.of, side, Math.log(value), CURVED * (1 + Math.abs(Math.log(value))));
    case 'absolute':
      if (low[step.of]! >= 0) return goOn(step.of, side, value);
      return high[step.of]! <= 0 && goOn(step.of, flipped(-1), -value);
    case 'lesser':
    case 'greater': {
      const { left, right } = step;
      /** Whether an operand leaves the demand to the other one. */
      const idle = (one: number) =>
        step.kind === 'lesser'
          ? side === 1
            ? low[one]! > value
            : low[one]! >= value
          : side === 1
            ? high[one]! <= value
            : high[one]! < value;
      if (idle(left)) return goOn(right, side, value);
      return idle(right) && goOn(left, side, value);
    }
    case 'choose': {
      const strict = step.operator === '<';
      const [from, until] = [low[step.left]!, high[step.left]!];
      if (strict ? until < low[step.right]! : until <= low[step.right]!) return goOn(step.then, side, value);
      const fails = strict ? from >= high[step.right]! : from > high[step.right]!;
      return fails && step.otherwise !== null && goOn(step.otherwise, side, value);
    }
    default:
      return false;
  }
}

/** a/b against a value: a against the value times b, where b keeps its sign. */
function ofQuotient(
  affine: Affine,
  steps: readonly Step[],
  { left, right }: { left: number; right: number },
  { step, side, value: given }: Demand,
  sum: AffineSum,
): void {
  const value = given + side * Number.MIN_VALUE;
  const [least, most] = [affine.low[right]!, affine.high[right]!];
  // |b| = 0 has a value on neither side but where a is on that side of 0, too; −0 would turn it round.
  const isPositive = least > 0 || (steps[right]!.kind === 'absolute' && least >= 0);
  if (!(isPositive || most < 0) || !(Math.max(Math.abs(least), Math.abs(most)) < LARGE)) {
    sum.add(side, step);
    sum.plus(-side * value);
    return;
  }
  const root = isPositive && value > 0 ? rootOf(affine, steps, left) : null;
  const factor = root && ((value / root.factor) * (1 + side * EASED)) ** 2;
  if (root && factor! > LEAST) {
    sum.add(side, root.of);
    // The square of b lies below its chord and above its tangents.
    const [one, other] = side === 1 ? [least, most] : [(least + most) / 2, (least + most) / 2];
    sum.add(-side * factor! * (one + other), right);
    sum.plus(side * factor! * one * other);
    return;
  }
  const direction = isPositive ? side : -side;
  sum.add(direction, left);
  sum.add(-direction * value, right);
  sum.plus(-EASED * Math.abs(value) * Math.max(Math.abs(least), Math.abs(most)));
}

/** k and v of a step that is k √v, k > 0. */
function rootOf(
  { low, high, missing }: Affine,
  steps: readonly Step[],
  number: number,
): { factor: number; of: number } | null {
  const step = steps[number]!;
  if (step.kind === 'squareRoot') return { factor: 1, of: step.of };
  if (step.kind !== 'multiply') return null;
  for (const [one, other] of [
    [step.left, step.right],
    [step.right, step.left],
  ] as const) {
    const inner = steps[other]!;
    const isFixed = low[one] === high[one] && missing[one] === never && low[one]! > 0;
    if (isFixed && inner.kind === 'squareRoot') return { factor: low[one]!, of: inner.of };
  }
  return null;
}

/** A function below a sum of multiples of steps, written as slopes and a constant. */
interface AffineSum {
  /** Adds factor · (step): the function below it, or for a negative factor the one above. */
  add(factor: number, step: number): void;
  plus(value: number): void;
  /** The constant, lowered by what may have been rounded; −Infinity where the sum is not finite. */
  constant(): number;
}

function affineSum({ frame, stride, below, above }: Affine, slopes: Float64Array, start: number): AffineSum {
  let constant = 0;
  let size = 0;
  slopes.fill(0, start, start + stride);
  return {
    add(factor, step) {
      const side = factor >= 0 ? below : above;
      constant += factor * side.constants[step]!;
      size += Math.abs(factor * side.constants[step]!);
      for (let at = 0; at < frame.elements; at += 1) {
        const slope = factor * side.slopes[step * stride + at]!;
        slopes[start + at] = slopes[start + at]! + slope;
        size += Math.abs(slope) * frame.width[at]!;
      }
    },
    plus(value) {
      constant += value;
      size += Math.abs(value);
    },
    constant() {
      const eased = constant - ROUNDING * size - LEAST;
      if (Number.isFinite(eased)) return eased;
      slopes.fill(0, start, start + stride);
      return Number.NEGATIVE_INFINITY;
    },
  };
}
