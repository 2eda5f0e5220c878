import { type Form, roundingOf } from '../../kernel/form.ts';
import type { Box } from '../boxes/box.ts';
import { sortPlaces, startOrder } from '../boxes/greedy.ts';
import type { FormBounds } from './formBounds.ts';

/** Of a sum each part above the lower corner goes where it adds least, or most. */
export class FirstDegree implements FormBounds {
  readonly #form: Form;
  readonly #margin: number;
  readonly #weights: Float64Array;
  /** Places by rising weight. */
  readonly #order: Int32Array;

  constructor(form: Form, total: number, mostElements: number) {
    this.#form = form;
    this.#margin = roundingOf(form, total, mostElements);
    this.#weights = new Float64Array(mostElements);
    this.#order = new Int32Array(mostElements);
  }

  enter(members: readonly number[]): void {
    const { linear } = this.#form;
    const weights = this.#weights;
    for (let at = 0; at < members.length; at += 1) weights[at] = linear[members[at]!]!;
    startOrder(this.#order, 0, members.length);
    sortPlaces(weights, 0, this.#order, 0, members.length);
  }

  least(box: Box): number {
    return this.#filled(box, 0, 1) - this.#margin;
  }

  greatest(box: Box): number {
    return this.#filled(box, box.low.length - 1, -1) + this.#margin;
  }

  within(): number {
    return Number.NaN;
  }

  #filled({ low, high, total }: Box, first: number, direction: 1 | -1): number {
    const weights = this.#weights;
    let left = total;
    let sum = this.#form.constant;
    for (let at = 0; at < low.length; at += 1) {
      left -= low[at]!;
      sum += weights[at]! * low[at]!;
    }
    for (let place = first; left > 0; place += direction) {
      const at = this.#order[place]!;
      const width = high[at]! - low[at]!;
      const given = Math.min(width, left);
      sum += given * weights[at]!;
      left -= given;
    }
    return sum;
  }
}
