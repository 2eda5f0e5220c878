/**
 * A polynomial of degree 2 at most in the parts x of a grid point:
 *   scale · P(x),   P = constant + Σ linearᵢ xᵢ + Σᵢ≤ⱼ quadraticᵢⱼ xᵢ xⱼ,   scale > 0.
 * Indices are places in the pool; absent elements have 0 parts.
 *
 * How to consume it: a limit on a form is a limit on P, against the limit over `scale`. Where
 * `exact` is true all numbers of P are integers so small that no way of adding up P at a grid
 * point rounds: P is then known to the last digit, and a limit between two integers needs no
 * guard. Elsewhere roundingOf says how far a P that is built up step by step may be off.
 */
export interface Form {
  degree: 0 | 1 | 2;
  scale: number;
  constant: number;
  /** By place in the pool. */
  linear: Float64Array;
  /** At i · size + j for i ≤ j, 0 for i > j; null below degree 2. */
  quadratic: Float64Array | null;
  exact: boolean;
}

/** Half the distance from 1 to the next double: the relative error of one operation. */
export const EPSILON = 2 ** -53;

/** Integers up to here add without rounding, with room for the differences that a kernel forms. */
const EXACT_BELOW = 2 ** 52;

/** A fixed number. */
export function constantForm(value: number, size: number): Form {
  const scale = value === 0 ? 1 : Math.abs(value);
  return {
    ...{ degree: 0, scale, constant: Math.sign(value), exact: true },
    ...{ linear: new Float64Array(size), quadratic: null },
  };
}

/** scale · Σ aᵢ xᵢ. */
export function linearForm(coefficients: Float64Array, scale: number, total: number): Form {
  return withExactness(
    { degree: 1, scale, constant: 0, linear: coefficients, quadratic: null, exact: true },
    total,
  );
}

/** scale · Σᵢ<ⱼ bᵢⱼ xᵢ xⱼ of a symmetric matrix by rows. */
export function pairForm(matrix: Float64Array, size: number, scale: number, total: number): Form {
  const quadratic = matrix.map((value, at) => (Math.floor(at / size) < at % size ? value : 0));
  const linear = new Float64Array(size);
  return withExactness({ degree: 2, scale, constant: 0, linear, quadratic, exact: true }, total);
}

/** factor · form; null for a factor of 0. */
export function scaledForm(form: Form, factor: number): Form {
  if (factor > 0) return { ...form, scale: form.scale * factor };
  const { constant, linear, quadratic } = form;
  return {
    ...form,
    scale: form.scale * -factor,
    constant: 0 - constant,
    linear: linear.map((value) => 0 - value),
    quadratic: quadratic?.map((value) => 0 - value) ?? null,
  };
}

/** one + factor · other. */
export function sumOfForms(one: Form, other: Form, factor: number, total: number): Form {
  const ratio = (factor * other.scale) / one.scale;
  if (one.exact && other.exact && Number.isInteger(ratio)) {
    const sum = withExactness({ ...added(one, 1, other, ratio), scale: one.scale, exact: true }, total);
    if (sum.exact) return sum;
  }
  return { ...added(one, one.scale, other, factor * other.scale), scale: 1, exact: false };
}

/** one · other; null where the degree would exceed 2. */
export function productOfForms(one: Form, other: Form, total: number): Form | null {
  if (one.degree + other.degree > 2) return null;
  if (one.degree === 0) return scaledOrNull(other, one.scale * one.constant);
  if (other.degree === 0) return scaledOrNull(one, other.scale * other.constant);
  const size = one.linear.length;
  const quadratic = new Float64Array(size * size);
  for (let i = 0; i < size; i += 1) {
    quadratic[i * size + i] = one.linear[i]! * other.linear[i]!;
    for (let j = i + 1; j < size; j += 1) {
      quadratic[i * size + j] = one.linear[i]! * other.linear[j]! + one.linear[j]! * other.linear[i]!;
    }
  }
  const product: Form = {
    ...{ degree: 2, scale: one.scale * other.scale, exact: one.exact && other.exact },
    constant: one.constant * other.constant,
    linear: one.linear.map((value, i) => value * other.constant + other.linear[i]! * one.constant),
    quadratic,
  };
  return withExactness(product, total);
}

/** No P of a grid point, nor a sum of some of its terms by size, is larger than this. */
export function greatestOf(form: Form, total: number): number {
  const { constant, linear, quadratic } = partsOf(form, total);
  return constant + linear + quadratic;
}

/**
 * How far P may be off when it is built up from differences, one part added at a time along each
 * element of up to so many, the last element taking what is left. 0 where it is exact.
 *
 * The numbers that are added up are P on points with fewer parts and its first and second
 * differences. Bounded by k, A and Q (the sizes of the terms of degree 0, 1, 2) they are at most
 * k + 3A + 9Q, (2A + 17Q)/X and 6Q/X² for X parts in all; X + 4n steps each round values once and
 * pass on the error of a difference.
 */
export function roundingOf(form: Form, total: number, elements: number): number {
  if (form.exact) return 0;
  const { constant, linear, quadratic } = partsOf(form, total);
  return EPSILON * (total + 4 * elements + 16) * (constant + 7 * linear + 34 * quadratic);
}

function scaledOrNull(form: Form, factor: number): Form | null {
  return factor === 0 ? null : scaledForm(form, factor);
}

function added(one: Form, first: number, other: Form, second: number) {
  const degree = Math.max(one.degree, other.degree) as Form['degree'];
  const both = (left: Float64Array, right: Float64Array): Float64Array =>
    left.map((value, at) => first * value + second * right[at]!);
  const none = new Float64Array(one.linear.length ** 2);
  return {
    degree,
    constant: first * one.constant + second * other.constant,
    linear: both(one.linear, other.linear),
    quadratic: degree < 2 ? null : both(one.quadratic ?? none, other.quadratic ?? none),
  };
}

function withExactness(form: Form, total: number): Form {
  const { constant, linear, quadratic } = form;
  const integers = [constant, ...linear, ...(quadratic ?? [])].every(Number.isInteger);
  const sizes = partsOf(form, total);
  const largest = sizes.constant + 7 * sizes.linear + 34 * sizes.quadratic;
  return { ...form, exact: form.exact && integers && largest < EXACT_BELOW };
}

/** What the terms of each degree come to at most, by size. */
function partsOf({ constant, linear, quadratic }: Form, total: number) {
  return {
    constant: Math.abs(constant),
    linear: largest(linear) * total,
    quadratic: quadratic === null ? 0 : largest(quadratic) * total * total,
  };
}

function largest(values: Float64Array): number {
  let most = 0;
  for (const value of values) most = Math.max(most, Math.abs(value));
  return most;
}
