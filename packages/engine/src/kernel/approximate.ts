import type { Code, Local } from './emit.ts';

/**
 * exp and ln for two numbers at once. Their errors are proven here and enter the slack of a node
 * (see slack.ts) together with that of the canonical Math.exp, Math.log and **, which are within
 * a unit or two in the last place.
 */

/** Largest size of an argument of exp: neither it nor its reciprocal leaves the normal doubles. */
export const LARGEST_EXPONENT = 690;

/**
 * Relative error of exp. The argument is n ln 2 + r with |r| ≤ 0.3466, where r is wrong by at most
 * 2⁻⁵³ · 0.35 + 1e-16 · |n| / 1000 (ln 2 in two parts); the Taylor polynomial of degree 10 leaves out less
 * than 0.3466¹¹ e^0.3466 / 11! = 3.1e-13; the steps of the polynomial round by less than 4e-16.
 */
export const EXPONENTIAL_ERROR = 5e-13;

/**
 * Absolute error of ln, beside the rounding of the result. The argument is 2ᵏ m with
 * √½ ≤ m ≤ √2; with s = (m − 1)/(m + 1), |s| ≤ 0.1716, ln m = 2 Σ s^(2j+1)/(2j+1), of which terms
 * from j = 8 on, together less than 2.1e-14 |s|, are left out.
 */
export const LOGARITHM_ERROR = 2e-14;

const LN2_HIGH = 0.6931471803691238; // 33 bits, so that n ln 2 is exact in it
const LN2_LOW = 1.9082149292705877e-10;
const EXPONENTIAL_TERMS = 10;
const LOGARITHM_TERMS = 8;
/** 2⁵² and 2⁵² + 1023: adding them moves an integer into the lowest bits of a double. */
const INTEGER_SHIFT = 2 ** 52;
const BIAS = 1023;
const bitsOf = (value: number): bigint => new BigInt64Array(Float64Array.of(value).buffer)[0]!;
const EXPONENT_BITS = 0x7ff0_0000_0000_0000n;

/** Replaces the vector on the stack, of numbers up to LARGEST_EXPONENT in size, by its exponentials. */
export function emitExponential(code: Code): void {
  const [x, n, r] = [code.local('v128'), code.local('v128'), code.local('v128')];
  code.tee(x).splat(Math.LOG2E).op('f64x2.mul', 'f64x2.nearest').set(n);
  code.get(x).get(n).splat(LN2_HIGH).op('f64x2.mul', 'f64x2.sub');
  code.get(n).splat(LN2_LOW).op('f64x2.mul', 'f64x2.sub').set(r);
  let factorial = 1;
  const coefficients = Array.from({ length: EXPONENTIAL_TERMS + 1 }, (_, k) => {
    if (k > 0) factorial *= k;
    return 1 / factorial;
  });
  emitPolynomial(code, r, coefficients);
  code
    .get(n)
    .splat(INTEGER_SHIFT + BIAS)
    .op('f64x2.add')
    .i32(52)
    .op('i64x2.shl', 'f64x2.mul');
}

/** Largest size of an exponent of 2: neither the power nor its reciprocal leaves the normal doubles. */
export const LARGEST_POWER_OF_TWO = 995;

/**
 * Relative error of powers of two. They are 2ⁿ times the polynomial of degree 5 that meets 2ʳ, |r| ≤ ½, in
 * the zeros of the Chebyshev polynomial T₆(2r): off by at most √2 (ln 2 / 2)⁶ / (2⁵ · 6!), the error of
 * interpolation (Stoer and Bulirsch, Introduction to Numerical Analysis, section 2.1.4; from memory),
 * 1.51e-7 of the least value; the steps of the polynomial round by less than 1e-15.
 */
export const POWER_OF_TWO_ERROR = 2e-7;

const POWER_OF_TWO = [
  1.0000000754548972, 0.6931471880262287, 0.24022107485308267, 0.05550357114219194, 0.009676031918324871,
  0.0013390863364616103,
];
/** 1.5 · 2⁵²: what is added to it is rounded to an integer, which then stands in the lowest bits. */
const ROUNDING_SHIFT = 1.5 * 2 ** 52;

/** Replaces the vector on the stack, of numbers up to LARGEST_POWER_OF_TWO in size, by roughly 2 to them. */
export function emitPowerOfTwo(code: Code): void {
  const [y, shifted, r] = [code.local('v128'), code.local('v128'), code.local('v128')];
  code.tee(y);
  code.get(y).splat(ROUNDING_SHIFT).op('f64x2.add').tee(shifted);
  code.splat(ROUNDING_SHIFT).op('f64x2.sub', 'f64x2.sub').set(r);
  emitPolynomial(code, r, POWER_OF_TWO);
  code.get(shifted).i32(52).op('i64x2.shl', 'i64x2.add');
}

/** Replaces the vector on the stack, of positive normal numbers, by its natural logarithms. */
export function emitLogarithm(code: Code): void {
  const [x, exponent, m, s, square] = [0, 1, 2, 3, 4].map(() => code.local('v128')) as [
    Local,
    Local,
    Local,
    Local,
    Local,
  ];
  // The exponent, biased, of x over √½.
  const shift = (BigInt(BIAS) << 52n) - bitsOf(Math.SQRT1_2);
  code.tee(x).bits(shift).op('i64x2.add').bits(EXPONENT_BITS).op('v128.and').set(exponent);
  code
    .get(x)
    .get(exponent)
    .op('i64x2.sub')
    .bits(BigInt(BIAS) << 52n)
    .op('i64x2.add')
    .set(m);
  code.get(m).splat(1).op('f64x2.sub').get(m).splat(1).op('f64x2.add', 'f64x2.div').tee(s);
  code.get(s).op('f64x2.mul').set(square);
  const coefficients = Array.from({ length: LOGARITHM_TERMS }, (_, j) => 2 / (2 * j + 1));
  emitPolynomial(code, square, coefficients);
  code.get(s).op('f64x2.mul');
  code.get(exponent).i32(52).op('i64x2.shr_u').bits(bitsOf(INTEGER_SHIFT)).op('v128.or');
  code
    .splat(INTEGER_SHIFT + BIAS)
    .op('f64x2.sub')
    .splat(Math.LN2)
    .op('f64x2.mul', 'f64x2.add');
}

/**
 * Σ coefficients[k] xᵏ by Estrin's rule: pairs c₂ₖ + c₂ₖ₊₁ x are a polynomial in x², and so on. Horner's
 * needs no power of x, but each of its steps waits for the one before.
 */
function emitPolynomial(code: Code, x: Local, coefficients: readonly number[]): void {
  const powers = [x];
  for (let reach = 2; reach < coefficients.length; reach *= 2) {
    const [last, next] = [powers.at(-1)!, code.local('v128')];
    code.get(last).get(last).op('f64x2.mul').set(next);
    powers.push(next);
  }
  const push = (from: number, end: number): void => {
    if (end - from === 1) {
      code.splat(coefficients[from]!);
      return;
    }
    const level = Math.ceil(Math.log2(end - from)) - 1;
    const middle = from + 2 ** level;
    push(middle, end);
    code.get(powers[level]!).op('f64x2.mul');
    push(from, middle);
    code.op('f64x2.add');
  };
  push(0, coefficients.length);
}
