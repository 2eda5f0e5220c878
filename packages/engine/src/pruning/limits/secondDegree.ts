import { EPSILON, type Form, greatestOf } from '../../kernel/form.ts';
import type { Box } from '../boxes/box.ts';
import { sortPlaces, startOrder } from '../boxes/greedy.ts';
import type { FormBounds } from './formBounds.ts';

/** Vertices of a box are gone through for systems of up to so many elements. */
const mostForVertices = 7;

/**
 * With x = corner + y, Σ y = rest, the squares of y become products and multiples of it:
 *   P = P(corner) + Σ gᵢyᵢ + Σᵢ<ⱼ bᵢⱼyᵢyⱼ,
 * and Σⱼ bᵢⱼyⱼ lies between its greedy ends. Where no b is negative P bends down along every line
 * that the sum leaves open, so it is least at a vertex; where none is positive it is greatest there.
 */
export class SecondDegree implements FormBounds {
  readonly #form: Form;
  readonly #margin: number;
  readonly #stride: number;
  readonly #total: number;
  #elements = 0;
  #members: readonly number[] = [];
  #isEntered = false;
  /** P = constant + Σ linear x + Σᵢ<ⱼ b x x on points that make the whole. */
  #constant = 0;
  readonly #linear: Float64Array;
  /** Symmetric, by rows; 0 on the diagonal. */
  readonly #b: Float64Array;
  /** Places of each row by rising b. */
  readonly #orders: Int32Array;
  #noneNegative = false;
  #nonePositive = false;
  readonly #gradient: Float64Array;
  readonly #slopes: Float64Array;
  readonly #order: Int32Array;
  readonly #middle: Float64Array;
  #inMiddle = 0;
  #middleOf: Box | null = null;

  constructor(form: Form, total: number, mostElements: number) {
    this.#form = form;
    this.#middle = new Float64Array(mostElements);
    this.#total = total;
    this.#stride = mostElements;
    this.#margin = marginOf(form, total);
    this.#linear = new Float64Array(mostElements);
    this.#b = new Float64Array(mostElements * mostElements);
    this.#orders = new Int32Array(mostElements * mostElements);
    this.#gradient = new Float64Array(mostElements);
    this.#slopes = new Float64Array(mostElements);
    this.#order = new Int32Array(mostElements);
  }

  enter(members: readonly number[]): void {
    this.#members = members;
    this.#elements = members.length;
    this.#isEntered = false;
    this.#middleOf = null;
  }

  /** The numbers of the system at hand, read when they are first asked for. */
  #read(): void {
    if (this.#isEntered) return;
    this.#isEntered = true;
    const { constant, linear, quadratic } = this.#form;
    const size = linear.length;
    const [members, elements, stride, b] = [this.#members, this.#elements, this.#stride, this.#b];
    this.#constant = constant;
    this.#noneNegative = true;
    this.#nonePositive = true;
    for (let row = 0; row < elements; row += 1) {
      const one = members[row]!;
      const square = quadratic![one * size + one]!;
      // x² = x · whole − Σ x · (the others).
      this.#linear[row] = linear[one]! + square * this.#total;
      b[row * stride + row] = 0;
      for (let column = row + 1; column < elements; column += 1) {
        const other = members[column]!;
        const weight = quadratic![one * size + other]! - square - quadratic![other * size + other]!;
        b[row * stride + column] = weight;
        b[column * stride + row] = weight;
        if (weight < 0) this.#noneNegative = false;
        if (weight > 0) this.#nonePositive = false;
      }
    }
    startOrder(this.#order, 0, elements);
    for (let row = 0; row < elements; row += 1) {
      startOrder(this.#orders, row * stride, elements);
      sortPlaces(b, row * stride, this.#orders, row * stride, elements);
    }
  }

  least(box: Box): number {
    this.#read();
    if (this.#noneNegative && this.#elements <= mostForVertices)
      return this.#atVertices(box, 1) - this.#margin;
    return this.#greedy(box, 1) - this.#margin;
  }

  greatest(box: Box): number {
    this.#read();
    if (this.#nonePositive && this.#elements <= mostForVertices)
      return -this.#atVertices(box, -1) + this.#margin;
    return -this.#greedy(box, -1) + this.#margin;
  }

  within(box: Box): number {
    if (this.#middleOf === box) return this.#inMiddle;
    this.#read();
    const { low, high, total } = box;
    const [elements, stride, b, linear, middle] = [
      this.#elements,
      this.#stride,
      this.#b,
      this.#linear,
      this.#middle,
    ];
    let rest = total;
    let widths = 0;
    for (let at = 0; at < elements; at += 1) {
      rest -= low[at]!;
      widths += high[at]! - low[at]!;
    }
    const share = widths === 0 ? 0 : rest / widths;
    let value = this.#constant;
    for (let row = 0; row < elements; row += 1) {
      const amount = low[row]! + share * (high[row]! - low[row]!);
      middle[row] = amount;
      let sum = linear[row]!;
      for (let column = 0; column < row; column += 1) sum += b[row * stride + column]! * middle[column]!;
      value += amount * sum;
    }
    this.#inMiddle = value;
    this.#middleOf = box;
    return value;
  }

  /** P at the lower corner; leaves the derivatives there, times the sign, in `gradient`. */
  #corner({ low }: Box, sign: 1 | -1): number {
    const [elements, stride, b, linear, gradient] = [
      this.#elements,
      this.#stride,
      this.#b,
      this.#linear,
      this.#gradient,
    ];
    let value = 0;
    for (let row = 0; row < elements; row += 1) {
      let sum = 0;
      for (let column = 0; column < elements; column += 1) sum += b[row * stride + column]! * low[column]!;
      gradient[row] = sign * (linear[row]! + sum);
      value += low[row]! * (linear[row]! + sum / 2);
    }
    return sign * (this.#constant + value);
  }

  /** At most sign · P anywhere in the box. */
  #greedy(box: Box, sign: 1 | -1): number {
    const { low, high, total } = box;
    const [elements, stride, b, orders, slopes] = [
      this.#elements,
      this.#stride,
      this.#b,
      this.#orders,
      this.#slopes,
    ];
    const corner = this.#corner(box, sign);
    let rest = total;
    for (let at = 0; at < elements; at += 1) rest -= low[at]!;
    for (let row = 0; row < elements; row += 1) {
      let left = rest;
      let sum = 0;
      for (let place = sign === 1 ? 0 : elements - 1; left > 0; place += sign) {
        const at = orders[row * stride + place]!;
        const width = high[at]! - low[at]!;
        const given = Math.min(width, left);
        sum += given * b[row * stride + at]!;
        left -= given;
      }
      slopes[row] = this.#gradient[row]! + (sign * sum) / 2;
    }
    sortPlaces(slopes, 0, this.#order, 0, elements);
    let least = corner;
    for (let place = 0; rest > 0; place += 1) {
      const at = this.#order[place]!;
      const width = high[at]! - low[at]!;
      const given = Math.min(width, rest);
      least += given * slopes[at]!;
      rest -= given;
    }
    return least;
  }

  /**
   * The least sign · P of the vertices: all amounts but one at a bound. Amounts change their side
   * one after another, so that every choice comes up once.
   */
  #atVertices(box: Box, sign: 1 | -1): number {
    const { low, high, total } = box;
    const [elements, stride, b, gradient] = [this.#elements, this.#stride, this.#b, this.#gradient];
    let value = this.#corner(box, sign);
    let rest = total;
    for (let at = 0; at < elements; at += 1) rest -= low[at]!;
    if (rest === 0) return value;
    let least = Number.POSITIVE_INFINITY;
    let sides = 0;
    for (let turn = 1; ; turn += 1) {
      if (rest >= 0) {
        for (let free = 0; free < elements; free += 1) {
          if ((sides >> free) & 1 || rest > high[free]! - low[free]!) continue;
          const here = value + rest * gradient[free]!;
          if (here < least) least = here;
        }
      }
      if (turn >= 2 ** elements) break;
      const bit = 31 - Math.clz32(turn & -turn);
      sides ^= 1 << bit;
      const step = (sides >> bit) & 1 ? high[bit]! - low[bit]! : low[bit]! - high[bit]!;
      value += step * gradient[bit]!;
      rest -= step;
      const change = sign * step;
      for (let at = 0; at < elements; at += 1) gradient[at]! += change * b[bit * stride + at]!;
    }
    return least;
  }
}

/**
 * How far a bound of degree 2 may be off. On the way stand P at corners whose parts make several
 * times the whole, up to 3 · 49 times what P is on the grid, and some hundred of them are added up.
 */
function marginOf(form: Form, total: number): number {
  const size = greatestOf(form, total);
  return form.exact && 512 * size < 2 ** 52 ? 0 : 2 ** 16 * EPSILON * size;
}
