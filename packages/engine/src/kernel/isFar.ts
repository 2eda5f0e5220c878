/**
 * Whether a number lies so far from 1 that some of them, multiplied, may leave what a double holds. Then the
 * canonical evaluator has an infinity, or 0, or a few digits, where a kernel, which takes factors in another order
 * or to the other side of a comparison, has something else. 0 is not far, nor is what is no finite number.
 */
export function isFar(value: number): boolean {
  const size = Math.abs(value);
  return size !== 0 && size < Number.POSITIVE_INFINITY && !(size >= LEAST && size <= 1 / LEAST);
}

const LEAST = 1e-60;
