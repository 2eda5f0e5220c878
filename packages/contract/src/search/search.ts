import { z } from 'zod';
import { scheduleSchema } from '../schedule/schedule.ts';
import type { SearchSpecification } from '../specification/specification.ts';

/** The states of a search; what moves it from one to another: packages/search, states.ts. */
export const searchStates = ['waiting', 'running', 'paused', 'done', 'cancelled', 'failed'] as const;
export type SearchState = (typeof searchStates)[number];

/** Whether nothing more comes of a search by itself. */
export function isOver(state: SearchState): boolean {
  return state === 'done' || state === 'cancelled' || state === 'failed';
}

/**
 * Counts of a result: see the docs of the specification for each meaning. `passedEach` is in the
 * order of the limits. What the search does not count is null: see its `tally`.
 */
export const countsSchema = z.object({
  systems: z.number().int(),
  points: z.number().int(),
  passed: z.number().int().nullable(),
  passedEach: z.array(z.number().int()).nullable(),
  outside: z.record(z.string(), z.number().int()).nullable(),
});
export type Counts = z.infer<typeof countsSchema>;

/** The best grid point so far, and how it became so: each time a better one was found, after how many points. */
export const bestSoFarSchema = z.object({
  composition: z.record(z.string(), z.number()),
  score: z.number().nullable(),
  improvements: z
    .array(z.object({ points: z.number().int(), score: z.number().nullable() }))
    .describe('In order, the latest last; of very many, some in between are left out'),
});
export type BestSoFar = z.infer<typeof bestSoFarSchema>;

/** A search as anybody sees it: while it runs `counts` grows, and holds what is known so far. */
export const searchViewSchema = z
  .object({
    id: z.string(),
    name: z.string(),
    state: z.enum(searchStates),
    /** why it waits, is paused or failed; null otherwise */
    reason: z.string().nullable(),
    /** the question in one line of plain words */
    question: z.string(),
    specification: z.custom<SearchSpecification>(),
    /** of its candidates' quantities, those that GET /quantities does not list: late ones, and one's own */
    moreQuantities: z.array(
      z.object({
        id: z.string(),
        kind: z.enum(['late', 'own']),
        name: z.string(),
        symbol: z.string(),
        unit: z.string(),
        notation: z.string(),
        meaning: z.string(),
        decimals: z.number().int(),
      }),
    ),
    /** what was ignored or rounded while checking, in words */
    notices: z.array(z.string()),
    /** when it is worked on */
    schedule: scheduleSchema,
    progress: z.object({ points: z.number().int(), total: z.number().int() }),
    counts: countsSchema,
    kept: z.number().int(),
    /** null while nothing passed, or where nothing is kept */
    bestSoFar: bestSoFarSchema.nullable(),
    seconds: z.number().nullable(),
    preparationSeconds: z.number().nullable(),
    storingSeconds: z.number().nullable(),
    /** grid points a second of late, and the seconds left at that rate; null when not running */
    rate: z.number().nullable(),
    secondsLeft: z.number().nullable(),
    dataVersion: z.string(),
    engineVersion: z.string(),
    /** date and currency of the price list in force, null without one */
    prices: z.object({ date: z.string(), currency: z.string(), invented: z.boolean() }).nullable(),
    createdAt: z.string(),
    finishedAt: z.string().nullable(),
  })
  .meta({ id: 'Search' });
export type SearchView = z.infer<typeof searchViewSchema>;

/** One kept grid point. `composition` in at.%, symbols alphabetical; quantities by id, null where there is no value. */
export const candidateSchema = z
  .object({
    rank: z.number().int(),
    composition: z.record(z.string(), z.number()),
    quantities: z.record(z.string(), z.number().nullable()),
    score: z.number().nullable(),
    /** whether it is on the Pareto front; there exactly when the search asked for one */
    front: z.boolean().exactOptional(),
  })
  .meta({ id: 'Candidate' });
export type Candidate = z.infer<typeof candidateSchema>;

/** What the person asks of the kept candidates. Ranges are inclusive. */
export interface CandidateQuery {
  ranges: { quantity: string; min?: number; max?: number }[];
  /** only members of the Pareto front */
  front?: true;
  has: string[];
  without: string[];
  /** 'rank' or a quantity id */
  order: string;
  direction: 'asc' | 'desc';
  limit: number;
  after?: string;
  at?: number;
}

/** A page of kept candidates; `next` is the key of the following page, null at the end. */
export const candidatePageSchema = z
  .object({
    items: z.array(candidateSchema),
    next: z.string().nullable(),
    among: z.object({
      kept: z.number().int(),
      passed: z.number().int().nullable(),
      points: z.number().int(),
    }),
  })
  .meta({ id: 'CandidatePage' });
export type CandidatePage = z.infer<typeof candidatePageSchema>;

/**
 * How large a search is, before it runs. `seconds` is an estimate on the workers present, null where
 * none is; an upper bound where the search leaves out what cannot matter (`atMost`).
 */
export const sizeSchema = z
  .object({
    systems: z.number().int(),
    points: z.number().int(),
    seconds: z.number().nullable(),
    atMost: z.boolean(),
    workers: z.number().int(),
    question: z.string(),
    notices: z.array(z.string()),
  })
  .meta({ id: 'Size' });
export type Size = z.infer<typeof sizeSchema>;
