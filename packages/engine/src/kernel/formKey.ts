import type { Form } from './form.ts';

const numbers = new WeakMap<object, number>();
let objects = 0;

function numberOf(one: object): number {
  let number = numbers.get(one);
  if (number === undefined) {
    objects += 1;
    number = objects;
    numbers.set(one, number);
  }
  return number;
}

/** Equal keys: the same P. */
export function formKey({ constant, linear, quadratic }: Form): string {
  return `${constant} ${numberOf(linear)} ${quadratic && numberOf(quadratic)}`;
}
