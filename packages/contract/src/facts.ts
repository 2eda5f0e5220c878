import { z } from 'zod';

const value = z.number().nullable();

/**
 * The data that screening computes from, cut to a set of elements: plain arrays, so that they
 * travel to workers and pages unchanged.
 *
 * - `symbols`: alphabetical; every array below follows this order.
 * - `columns`: per element column (id and unit: packages/elements), one value per symbol, null where unknown.
 * - `pairs`: per pair column, a symmetric matrix with a zero diagonal, null where unknown.
 */
export const factsSchema = z.object({
  symbols: z.array(z.string()),
  columns: z.record(z.string(), z.array(value)),
  pairs: z.record(z.string(), z.array(z.array(value))),
});
export type Facts = z.infer<typeof factsSchema>;
