import { conditionsSchema, type Fault, faultsOf, ProblemError } from '@tiegel/contract';
import { type Composition, compositionOf, parseAlloy } from '@tiegel/elements';
import { conditions } from '@tiegel/screening';
import { z } from 'zod';

/** An alloy as it is sent. */
export const alloySchema = z
  .union([z.string(), z.record(z.string(), z.number())])
  .describe('Write an alloy such as "Al7.69Co30.77Fe61.54", or at.% by symbol such as {"Co": 50, "Ni": 50}.');

/** Temperatures and the like at which an alloy is looked at. */
export const conditionsField = conditionsSchema(Object.values(conditions)).exactOptional();

/** An alloy in at.%; what is wrong with it joins `faults`, and null comes back. Of the wrong form, which is a fault of its own, it is null too. */
export function readAlloy(sent: unknown, pointer: string, faults: Fault[]): Composition | null {
  if (!alloySchema.safeParse(sent).success) return null;
  // As it was sent: the schema leaves out a key such as "__proto__" without a word.
  const alloy = sent as z.infer<typeof alloySchema>;
  try {
    return typeof alloy === 'string' ? parseAlloy(alloy, { pointer }) : compositionOf(alloy, { pointer });
  } catch (error) {
    if (!(error instanceof ProblemError)) throw error;
    faults.push(...error.faults);
    return null;
  }
}

const withAlloy = z.object({ composition: z.unknown() });

/**
 * The alloy of a body, its `composition`, in at.%.
 * @throws ProblemError with every fault of the body: those of its form, and those of an alloy that has the form
 */
export function alloyOfBody(schema: z.ZodType, body: unknown): Composition {
  const faults = faultsOf(schema, body);
  const { composition: sent } = withAlloy.catch({ composition: null }).parse(body);
  const composition = readAlloy(sent, '/composition', faults);
  if (faults.length > 0 || composition === null) throw new ProblemError(faults);
  return composition;
}
