import { z } from 'zod';
import { report } from '../problem/faultsOf.ts';

const MOST_LIMITS = 64;

const edge = z.number().describe("Write a number in the quantity's unit; it is inclusive.");

/** The section `limits`: quantities with a smallest or largest value or both, inclusive. */
export function limitsSchema(quantity: z.ZodType<string>) {
  const limit = z
    .strictObject({ quantity, min: edge.exactOptional(), max: edge.exactOptional() })
    .check((payload) => {
      const { quantity: what, min, max } = payload.value;
      if (min === undefined && max === undefined)
        report(payload, 'specification/limit-without-bound', { what });
      if (min === undefined || max === undefined || min <= max) return;
      report(payload, 'specification/bounds-crossed', { what, min, max });
    })
    .describe('Write a quantity with min or max or both, for example {"quantity": "density", "max": 8}.');
  return z
    .array(limit)
    .max(MOST_LIMITS)
    .describe(
      `Write at most ${MOST_LIMITS} limits as a list, for example [{"quantity": "density", "max": 8}].`,
    );
}
