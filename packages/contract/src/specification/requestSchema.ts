import { z } from 'zod';
import { inDigits } from '../inDigits.ts';
import { report, shortened } from '../problem/faultsOf.ts';
import { nearest } from '../problem/nearest.ts';
import type { Fault } from '../problem/problem.ts';
import { componentsSchema } from './components.ts';
import { conditionsSchema, type KnownCondition } from './conditions.ts';
import { elementsSchema } from './elements.ts';
import { fractionsSchema } from './fractions.ts';
import { frontSchema } from './front.ts';
import { letsSchema } from './lets.ts';
import { limitsSchema } from './limits.ts';
import { nameSchema } from './name.ts';
import { rankSchema } from './rank.ts';
import { tallySchema } from './tally.ts';

const MOST_KEPT = 1_000_000;
const MOST_KEPT_PER_SYSTEM = 20;
const LONGEST_ID = 64;

/**
 * What the contract must know of the rest: ids of quantities that may be limited or ranked and of
 * those that are worked out for kept candidates only, symbols with data, the conditions that may
 * be set, and what is wrong with figures of merit of one's own.
 */
export interface Known {
  quantities: readonly { id: string }[];
  lateQuantities?: readonly { id: string }[];
  elements: readonly string[];
  conditions?: readonly KnownCondition[];
  letFaults?: (lets: Readonly<Record<string, string>>) => readonly Fault[];
}

/** The form of a search specification as it is sent. Each part's description says what would be right there. */
export function requestSchema(known: Known) {
  const { quantities, lateQuantities = [] } = known;
  const late = lateQuantities.map(({ id }) => id);
  const quantity = quantitySchema(
    quantities.map(({ id }) => id),
    late,
  );
  return z
    .strictObject({
      version: z.literal(1).describe('Write 1, or leave it out.').exactOptional(),
      name: nameSchema.exactOptional(),
      elements: elementsSchema(known.elements),
      components: componentsSchema,
      fractions: fractionsSchema(known.elements),
      limits: limitsSchema(quantity).exactOptional(),
      rank: rankSchema(quantity),
      front: frontSchema(quantity).exactOptional(),
      lets: letsSchema.exactOptional(),
      keptOnly: limitsSchema(quantitySchema(late))
        .describe(
          'Write limits on quantities that are worked out for kept candidates only, for example [{"quantity": "demixingRatio", "max": 0.6}].',
        )
        .exactOptional(),
      conditions: conditionsSchema(known.conditions ?? []).exactOptional(),
      keep: upTo(MOST_KEPT).exactOptional(),
      keepPerSystem: upTo(MOST_KEPT_PER_SYSTEM).exactOptional(),
      tally: tallySchema.exactOptional(),
    })
    .describe('Write a search specification as a JSON object with elements, components, fractions and rank.');
}

export type SearchRequest = z.infer<ReturnType<typeof requestSchema>>;

/** The form of limits outside a specification, on these quantities. */
export function limitsOn(ids: readonly string[]) {
  return limitsSchema(quantitySchema(ids));
}

/** The form of the space of a search outside a specification, of these elements. */
export function spaceOf(symbols: readonly string[]) {
  return z
    .strictObject({
      elements: elementsSchema(symbols),
      components: componentsSchema,
      fractions: fractionsSchema(symbols),
    })
    .describe('Write elements, components and fractions as a search specification has them.');
}

export type SpaceRequest = z.infer<ReturnType<typeof spaceOf>>;

function upTo(most: number) {
  return z
    .int()
    .min(0)
    .max(most)
    .describe(`Write a whole number from 0 to ${inDigits(most)}.`);
}

/** @param late ids that belong under keptOnly */
function quantitySchema(ids: readonly string[], late: readonly string[] = []) {
  return z
    .string()
    .max(LONGEST_ID)
    .check((payload) => {
      if (ids.includes(payload.value)) return;
      if (late.includes(payload.value)) {
        report(payload, 'quantity/late', { id: payload.value });
        return;
      }
      const near = nearest(payload.value, ids);
      const values = { id: shortened(payload.value), known: ids.join(', ') };
      report(payload, 'quantity/unknown', near === null ? values : { ...values, near });
    })
    .describe('Write the id of a quantity, for example "density".')
    .meta({ enum: [...ids] });
}
