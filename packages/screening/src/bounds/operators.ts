import type { BinaryKind, Comparison, UnaryKind } from '../formula/expression.ts';
import { eitherMissing, type Interval, type Missing, setInterval } from './interval.ts';

/**
 * The interval of each operator, from those of what it works on.
 *
 * The ends bound the values as they are computed, roundings included: + − × ÷ and the root are
 * rounded correctly and are therefore monotone in floating point too, so that an end computed the
 * same way needs no margin. exp, ln and powers are not promised to be, and get one.
 *
 * An infinite end counts as a value that may occur, since a quotient by 0 is infinite.
 */
export const binaryInterval: Readonly<
  Record<BinaryKind, (left: Interval, right: Interval, into: Interval) => void>
> = {
  add(left, right, into) {
    addEnds(left, right.low, right.high, right.missing, into);
  },
  subtract(left, right, into) {
    addEnds(left, -right.high, -right.low, right.missing, into);
  },
  multiply(left, right, into) {
    const missing = eitherMissing(left.missing, right.missing);
    const zeroTimesInfinite =
      (holdsZero(left) && holdsInfinite(right)) || (holdsZero(right) && holdsInfinite(left));
    const a = product(left.low, right.low);
    const b = product(left.low, right.high);
    const c = product(left.high, right.low);
    const d = product(left.high, right.high);
    setInterval(into, Math.min(a, b, c, d), Math.max(a, b, c, d), sometimesIf(zeroTimesInfinite, missing));
  },
  divide(left, right, into) {
    const undefinedQuotient =
      (holdsZero(left) && holdsZero(right)) || (holdsInfinite(left) && holdsInfinite(right));
    const missing = sometimesIf(undefinedQuotient, eitherMissing(left.missing, right.missing));
    if (right.low > 0 || right.high < 0) divideEnds(left, right, missing, into);
    else divideByZeroToo(left, right, missing, into);
  },
  lesser(left, right, into) {
    const missing = eitherMissing(left.missing, right.missing);
    setInterval(into, Math.min(left.low, right.low), Math.min(left.high, right.high), missing);
  },
  greater(left, right, into) {
    const missing = eitherMissing(left.missing, right.missing);
    setInterval(into, Math.max(left.low, right.low), Math.max(left.high, right.high), missing);
  },
};

export const unaryInterval: Readonly<Record<UnaryKind, (of: Interval, into: Interval) => void>> = {
  negate(of, into) {
    setInterval(into, -of.high, -of.low, of.missing);
  },
  squareRoot(of, into) {
    const missing = sometimesIf(of.low < 0, of.missing);
    setInterval(into, Math.sqrt(Math.max(of.low, 0)), Math.sqrt(of.high), missing);
  },
  absolute(of, into) {
    const low = holdsZero(of) ? 0 : Math.min(Math.abs(of.low), Math.abs(of.high));
    setInterval(into, low, Math.max(Math.abs(of.low), Math.abs(of.high)), of.missing);
  },
  exponential(of, into) {
    setInterval(into, Math.max(0, lower(Math.exp(of.low))), higher(Math.exp(of.high)), of.missing);
  },
  logarithm(of, into) {
    const missing = sometimesIf(of.low < 0, of.missing);
    setInterval(into, lower(Math.log(Math.max(of.low, 0))), higher(Math.log(of.high)), missing);
  },
};

/** The interval of a power with a fixed exponent. */
export function powerInterval(of: Interval, exponent: number, into: Interval): void {
  const whole = Number.isInteger(exponent);
  const base = whole ? of : { ...of, low: Math.max(of.low, 0) };
  const missing = sometimesIf(!whole && of.low < 0, of.missing);
  if (exponent < 0 && whole && exponent % 2 !== 0 && base.low < 0 && base.high >= 0) {
    // An odd pole lies inside: both infinities are approached.
    setInterval(into, Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY, missing);
    return;
  }
  const atLow = (base.low + 0) ** exponent;
  const atHigh = (base.high + 0) ** exponent;
  let low = Math.min(atLow, atHigh);
  let high = Math.max(atLow, atHigh);
  if (base.low < 0 && base.high > 0 && exponent % 2 === 0) {
    // An even power turns round at 0.
    if (exponent > 0) low = 0;
    if (exponent < 0) high = Number.POSITIVE_INFINITY;
  }
  setInterval(into, lower(low), higher(high), base.low <= base.high ? missing : 'always');
}

/** The interval of a choice; `otherwise` is null where that side has no value. */
export function choiceInterval(
  left: Interval,
  operator: Comparison['operator'],
  right: Interval,
  then: Interval,
  otherwise: Interval | null,
  into: Interval,
): void {
  const strict = operator === '<';
  const surely = strict ? left.high < right.low : left.high <= right.low;
  const never = strict ? left.low >= right.high : left.low > right.high;
  const comparison = eitherMissing(left.missing, right.missing);
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  let missing = comparison;
  for (const side of [never ? undefined : then, surely ? undefined : otherwise]) {
    if (side === undefined) continue;
    if (side === null || side.missing !== 'never') missing = eitherMissing(missing, 'sometimes');
    if (side === null) continue;
    low = Math.min(low, side.low);
    high = Math.max(high, side.high);
  }
  setInterval(into, low, high, missing);
}

function addEnds(left: Interval, low: number, high: number, rightMissing: Missing, into: Interval): void {
  const opposite =
    (left.high === Number.POSITIVE_INFINITY && low === Number.NEGATIVE_INFINITY) ||
    (left.low === Number.NEGATIVE_INFINITY && high === Number.POSITIVE_INFINITY);
  const missing = sometimesIf(opposite, eitherMissing(left.missing, rightMissing));
  setInterval(
    into,
    orElse(left.low + low, Number.NEGATIVE_INFINITY),
    orElse(left.high + high, Number.POSITIVE_INFINITY),
    missing,
  );
}

/** Quotients by a divisor that keeps its sign. */
function divideEnds(left: Interval, right: Interval, missing: Missing, into: Interval): void {
  const a = quotient(left.low, right.low);
  const b = quotient(left.low, right.high);
  const c = quotient(left.high, right.low);
  const d = quotient(left.high, right.high);
  setInterval(into, Math.min(a, b, c, d), Math.max(a, b, c, d), missing);
}

/** Quotients by a divisor that may be 0, where x/0 is ±Infinity with the sign of x. */
function divideByZeroToo(left: Interval, right: Interval, missing: Missing, into: Interval): void {
  const [below, above] = [left.low < 0, left.high > 0];
  const [least, greatest] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  if (right.low < 0) {
    setInterval(into, least, greatest, missing);
  } else if (right.high > 0) {
    const low = below ? least : quotient(left.low, right.high);
    setInterval(into, low, above ? greatest : quotient(left.high, right.high), missing);
  } else {
    // Nothing but 0: infinite, or 0/0.
    const ends = [...(below ? [least] : []), ...(above ? [greatest] : [])];
    setInterval(into, ends.at(0) ?? Number.NaN, ends.at(-1) ?? Number.NaN, missing);
  }
}

const holdsZero = ({ low, high }: Interval) => low <= 0 && high >= 0;
const holdsInfinite = ({ low, high }: Interval) =>
  low === Number.NEGATIVE_INFINITY || high === Number.POSITIVE_INFINITY;
const orElse = (value: number, other: number) => (Number.isNaN(value) ? other : value);

/** In a hull, 0 · ∞ stands for products that stay 0. */
const product = (a: number, b: number) => orElse(a * b, 0);
/** In a hull, ∞/∞ stands for quotients that shrink to 0. */
const quotient = (a: number, b: number) => orElse(a / b, 0);

function sometimesIf(condition: boolean, missing: Missing): Missing {
  return condition ? eitherMissing(missing, 'sometimes') : missing;
}

/** Sixteen units in the last place: far more than an engine's error of exp, ln and power, which is about one. */
const MARGIN = 2 ** -48;
const lower = (value: number) => (Number.isFinite(value) ? value - Math.abs(value) * MARGIN : value);
const higher = (value: number) => (Number.isFinite(value) ? value + Math.abs(value) * MARGIN : value);
