import type { Form } from './form.ts';

/**
 * Writes a form's numbers for one system into one lane: with the last element's parts put in as
 * what the others leave of the whole, the constant, the differences and the second differences.
 *
 * @param into vectors as doubles; the form's begin at index `at`, those of lane 1 one further
 */
export function writeLane(
  { degree, constant, linear, quadratic }: Form,
  system: readonly number[],
  total: number,
  into: Float64Array,
  at: number,
): void {
  const free = system.length - 1;
  if (degree === 0) {
    into[at] = constant;
    return;
  }
  const last = system[free]!;
  const size = linear.length;
  let place = at + 2;
  if (quadratic === null) {
    into[at] = constant + linear[last]! * total;
    for (let i = 0; i < free; i += 1, place += 2) into[place] = linear[system[i]!]! - linear[last]!;
    return;
  }
  const square = quadratic[last * size + last]!;
  into[at] = constant + linear[last]! * total + square * total * total;
  for (let i = 0; i < free; i += 1, place += 2) {
    const element = system[i]!;
    const mixed = quadratic[element * size + last]!;
    into[place] = linear[element]! - linear[last]! + total * (mixed - 2 * square);
  }
  for (let i = 0; i < free; i += 1) {
    const row = system[i]! * size;
    const ofRow = quadratic[row + last]!;
    into[place] = quadratic[row + system[i]!]! + square - ofRow;
    place += 2;
    for (let j = i + 1; j < free; j += 1, place += 2) {
      into[place] = quadratic[row + system[j]!]! + 2 * square - ofRow - quadratic[system[j]! * size + last]!;
    }
  }
}
