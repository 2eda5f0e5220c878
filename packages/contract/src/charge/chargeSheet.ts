import { z } from 'zod';
import { writerSchema } from '../access/writer.ts';
import { amountsSchema } from '../alloy/amounts.ts';

const number = z.number();

const lineSchema = z
  .object({
    material: z.string(),
    element: z.string().nullable().describe('Its only element; null: a master alloy'),
    mass: number.describe('g, a multiple of the resolution'),
    exact: number.describe('g, before rounding'),
    contains: amountsSchema.describe('wt.% of its metal'),
    purity: number,
    price: number.nullable().describe('per kg'),
    cost: number.nullable(),
    melting: z.object({ temperature: number, estimated: z.boolean() }),
  })
  .meta({ id: 'ChargeLine' });

const extremeSchema = z.object({ element: z.string(), temperature: number.describe('K') });

/** What is answered of a charge, by key. */
const fields = {
  composition: amountsSchema.describe('at.%, the target: after the losses'),
  mass: number,
  resolution: number,
  lines: z.array(lineSchema),
  total: number.describe('g'),
  resulting: amountsSchema.describe('at.%, of the rounded masses after the losses'),
  rounding: amountsSchema.describe('at.%: farther from the target rounding brings no share'),
  cost: number.nullable().describe('Of the batch; null: a material that is used has no price'),
  currency: z.string().nullable(),
  order: z.array(z.string()).describe('Materials, the lowest-melting first'),
  window: z.object({
    lowestBoiling: extremeSchema,
    highestMelting: extremeSchema.nullable(),
    gap: number.nullable().describe('K'),
  }),
  loss: amountsSchema,
  expected: z.object({ lost: amountsSchema, impurities: number, ingot: number }).describe('g'),
  notes: z.array(z.string()).describe('What the numbers mean'),
  cautions: z.array(
    z
      .object({
        about: z.array(z.string()),
        kind: z.string(),
        text: z.string(),
        source: z.string(),
        follow: z.string().describe('Whose word holds'),
      })
      .meta({ id: 'Caution' }),
  ),
};

export const chargeSheetSchema = z.object(fields).meta({ id: 'ChargeSheet' });
export type ChargeSheetView = z.infer<typeof chargeSheetSchema>;

/** What is known of a saved sheet beside the sheet itself. */
const savedFields = {
  number: z.string().describe('As it is written on paper, C-0007; given once'),
  savedAt: z.string().describe('UTC, ISO 8601'),
  by: writerSchema,
  name: z.string(),
};

export const savedChargeSheetSchema = z
  .object({
    ...savedFields,
    ...fields,
    request: z.record(z.string(), z.unknown()).describe('As it was asked for'),
    dataVersion: z.string(),
    prices: z
      .object({ currency: z.string(), date: z.string(), invented: z.boolean() })
      .nullable()
      .describe('The price list that was in force; materials with prices of their own do not need it'),
  })
  .meta({ id: 'SavedChargeSheet' });
export type SavedChargeSheetView = z.infer<typeof savedChargeSheetSchema>;

/** A line of the list of saved sheets. */
export const chargeSheetSummarySchema = z
  .object({
    ...savedFields,
    composition: amountsSchema.describe('at.%'),
    mass: number.describe('g'),
    cost: number.nullable(),
    currency: z.string().nullable(),
  })
  .meta({ id: 'ChargeSheetSummary' });
export type ChargeSheetSummary = z.infer<typeof chargeSheetSummarySchema>;
