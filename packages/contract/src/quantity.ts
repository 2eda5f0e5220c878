import { z } from 'zod';

const sourceSchema = z.object({
  authors: z.string(),
  year: z.number().int().nullable(),
  where: z.string(),
  checked: z
    .enum(['against the paper', 'from memory', 'definition', 'common practice, no source', 'ours, no source'])
    .describe('How far anybody compared the formula with the source'),
});

/** A quantity as it is told: its definition, and what the formula reads in place of its tree. */
export const quantitySchema = z
  .object({
    id: z.string(),
    name: z.string(),
    symbol: z.string(),
    unit: z.string().describe("'' for a plain number; 'currency' stands for that of the price list"),
    notation: z.string().describe('The formula in the usual notation'),
    meaning: z.string(),
    range: z.object({ min: z.number().exactOptional(), max: z.number().exactOptional() }),
    decimals: z.number().int().describe('Decimals that mean something in display'),
    source: sourceSchema,
    caution: z.string().nullable(),
    basis: z
      .object({ quantity: z.string(), max: z.number() })
      .exactOptional()
      .describe('It means nothing of alloys where this late quantity is above max'),
    needs: z.object({
      elements: z.array(z.string()).describe('Columns of element data that the formula reads'),
      pairs: z.array(z.string()).describe('Columns of pair data that the formula reads'),
      conditions: z.array(z.string()).describe('Conditions of the search that the formula reads'),
    }),
  })
  .meta({ id: 'Quantity' });
export type QuantityView = z.infer<typeof quantitySchema>;

/** A quantity of kept candidates only. */
export const lateQuantitySchema = z
  .object({
    id: z.string(),
    name: z.string(),
    symbol: z.string(),
    unit: z.string(),
    notation: z.string().describe('How it is found, in the usual notation'),
    meaning: z.string(),
    decimals: z.number().int(),
    source: sourceSchema,
    caution: z.string(),
  })
  .meta({ id: 'LateQuantity' });
export type LateQuantityView = z.infer<typeof lateQuantitySchema>;
