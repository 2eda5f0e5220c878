import { z } from 'zod';
import { factsSchema } from '../facts.ts';
import type { SearchSpecification } from '../specification/specification.ts';

/**
 * Everything a worker needs to score any chunk of a search: a plain value, made before anything
 * runs. A worker of another engine version refuses it.
 *
 * - `facts`: cut to the effective pool (pool + require − forbid), with the price list in force
 *   as column `price` (currency/kg) where there is one.
 * - `columns`: the element columns of somebody's own that the search reads; their values are in the
 *   facts. There exactly when there are some.
 * - `conditions`: by name, in the units of the conditions (K, 1/s, µm).
 */
export const planSchema = z.object({
  engineVersion: z.string(),
  dataVersion: z.string(),
  specification: z.custom<SearchSpecification>((value) => typeof value === 'object' && value !== null),
  facts: factsSchema,
  columns: z
    .array(
      z.object({
        id: z.string(),
        name: z.string(),
        unit: z.string(),
        mixing: z.enum(['mole', 'mass', 'volume']),
      }),
    )
    .exactOptional(),
  conditions: z.record(z.string(), z.number()),
});
export type Plan = z.infer<typeof planSchema>;

/**
 * A share of a search. Systems are numbered by combinatorial rank (packages/engine: systems);
 * a chunk is the systems from `firstSystem` up to and not including `endSystem`. Only where
 * that is a single system may it be a part of it: the points from `firstPoint` up to and not
 * including `endPoint`, numbered inside the system. Else `firstPoint` is 0 and `endPoint` null.
 *
 * - `ordinal`: place in the plan, from 0; the ledger takes each ordinal once.
 * - `points`: how many grid points it holds, exactly.
 */
export const chunkSchema = z.object({
  ordinal: z.number().int().nonnegative(),
  firstSystem: z.number().int().nonnegative(),
  endSystem: z.number().int().nonnegative(),
  firstPoint: z.number().int().nonnegative(),
  endPoint: z.number().int().nonnegative().nullable(),
  points: z.number().int().nonnegative(),
});
export type Chunk = z.infer<typeof chunkSchema>;
