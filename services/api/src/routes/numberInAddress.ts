import { z } from 'zod';

const decimal = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$/i;

/**
 * A number in the address of a request, where all is text. An empty text is no 0, and what is no
 * decimal number is named as it was written.
 */
export function numberInAddress<N extends z.ZodType<number>>(number: N) {
  return z.preprocess(
    (sent) => (typeof sent === 'string' && decimal.test(sent) ? Number(sent) : sent),
    number,
  );
}
