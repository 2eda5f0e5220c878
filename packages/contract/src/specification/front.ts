import { z } from 'zod';
import { report } from '../problem/faultsOf.ts';
import type { FrontEntry } from './specification.ts';

/**
 * The section `front`: the points of which no other one that passes is as good in all of these
 * quantities and better in one. Points with equal values are all members.
 */
export function frontSchema(quantity: z.ZodType<string>) {
  const entry = z
    .strictObject({ quantity, prefer: z.enum(['high', 'low']).describe('Write "high" or "low".') })
    .describe(
      'Write a quantity and what is better of it, for example {"quantity": "density", "prefer": "low"}.',
    );
  return z
    .array(entry)
    .min(2)
    .max(4)
    .check(reportRepeated)
    .describe(
      'Write 2 to 4 quantities to be weighed against each other, for example [{"quantity": "density", "prefer": "low"}, {"quantity": "cost", "prefer": "low"}].',
    );
}

function reportRepeated(payload: z.core.ParsePayload<FrontEntry[]>): void {
  const named = payload.value.map(({ quantity }) => quantity);
  for (const [place, quantity] of named.entries()) {
    if (named.indexOf(quantity) === place) continue;
    report(payload, 'specification/front-repeated', { quantity }, [place, 'quantity']);
  }
}
