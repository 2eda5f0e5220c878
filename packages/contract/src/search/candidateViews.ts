import { z } from 'zod';
import { candidatePageSchema } from './search.ts';

const count = z.number().int();
const among = candidatePageSchema.shape.among;
const meeting = count.describe('How many of the kept candidates meet the filters');

/** Columns of values of the kept candidates that meet a query's filters, by rank. */
export const candidateValuesSchema = z
  .object({
    quantities: z.array(z.string()).describe('As asked for'),
    ranks: z.array(count),
    values: z
      .array(z.array(z.number().nullable()))
      .describe('For each quantity, in the order of `ranks`; null where there is no value'),
    every: count.describe('1: all are here. n: every n-th rank, and all of the best'),
    meeting,
    among,
  })
  .meta({ id: 'CandidateValues' });
export type CandidateValues = z.infer<typeof candidateValuesSchema>;

/** How often each element is in the kept candidates that meet a query's filters, and how much of it. */
export const elementUseSchema = z
  .object({
    elements: z
      .array(
        z.object({
          symbol: z.string(),
          candidates: count,
          amounts: z
            .array(z.object({ atomicPercent: z.number(), candidates: count }))
            .describe('Each amount that occurs, rising'),
        }),
      )
      .describe('Those of the pool, the most frequent first'),
    meeting,
    among,
  })
  .meta({ id: 'ElementUse' });
export type ElementUse = z.infer<typeof elementUseSchema>;

/**
 * The Pareto front of two quantities among the kept candidates that meet a query's filters: those
 * that no other one beats in one of them without losing in the other.
 */
export const tradeOffSchema = z
  .object({
    quantities: z.tuple([z.string(), z.string()]),
    prefer: z.tuple([z.enum(['low', 'high']), z.enum(['low', 'high'])]),
    items: z
      .array(
        z.object({
          values: z.tuple([z.number(), z.number()]),
          rank: count.describe('Of the best ranked candidate with these values'),
          alike: count.describe('How many candidates have exactly these values'),
        }),
      )
      .describe('From the best of the first quantity to the best of the second'),
    meeting,
    among,
  })
  .meta({ id: 'TradeOff' });
export type TradeOff = z.infer<typeof tradeOffSchema>;

const spread = z.object({
  counts: z.array(count).describe('For each bin, one less than there are edges'),
  below: count,
  above: count,
  missing: count.describe('Without a value'),
});

/** How quantities lie over the grid of a search, over what passed and over what was kept, in the same bins. */
export const searchDistributionsSchema = z
  .object({
    sample: count.describe('Points drawn of the grid, each being equally likely; all of them where `exact`'),
    exact: z.boolean(),
    passed: z.number().describe('Share of the sample that meets all limits'),
    error: z.number().describe('Half-width of the 95 % interval of `passed`; 0 where exact'),
    quantities: z.array(
      z.object({
        quantity: z.string(),
        edges: z.array(z.number()).describe('Of the bins, rising; the last bin has its upper edge'),
        grid: spread
          .nullable()
          .describe('Of the sample; null where the quantity is worked out for kept ones only'),
        passing: spread.nullable().describe('Of those of the sample that meet all limits'),
        kept: spread.describe('Of the kept candidates that meet the filters'),
      }),
    ),
    meeting,
    among,
  })
  .meta({ id: 'SearchDistributions' });
export type SearchDistributions = z.infer<typeof searchDistributionsSchema>;

/** Orders of the kept candidates that are being made at the moment. */
export const ordersSchema = z.array(
  z.object({
    order: z.string().describe('The id of the quantity.'),
    direction: z.enum(['asc', 'desc']),
    share: z.number().describe('How much of the work is done, from 0 to 1.'),
  }),
);
export type OrdersView = z.infer<typeof ordersSchema>;
