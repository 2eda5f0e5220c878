import { keepPreviousData, queryOptions } from '@tanstack/react-query';
import type {
  Amounts,
  Evidence,
  Explanation,
  Limit,
  Substitute,
  TypicalRanges,
  WeighingError,
} from '@tiegel/contract';
import type { SearchSpace } from '@tiegel/contract/terms';
import { answerInLocale } from '../numbers/inLocale.ts';
import { post, request } from './request.ts';

const forever = Number.POSITIVE_INFINITY;

/** Everything that is said of an alloy. */
export const explanationQuery = (composition: Amounts, conditions: Record<string, number>) =>
  queryOptions({
    queryKey: ['explanation', composition, conditions],
    queryFn: async ({ signal }) =>
      answerInLocale(await post<Explanation>('/explain', { composition, conditions }, { signal })),
    gcTime: 300_000,
  });

export const evidenceQuery = queryOptions({
  queryKey: ['evidence'],
  queryFn: async ({ signal }) => answerInLocale(await request<Evidence>('/evidence', { signal })),
});

export const typicalQuery = queryOptions({
  queryKey: ['typical'],
  queryFn: ({ signal }) => request<TypicalRanges>('/quantities/typical', { signal }),
  staleTime: forever,
});

/** What weighing leaves certain of an alloy; amounts in at.%, masses in g. */
export interface WeighingRequest {
  composition: Amounts;
  mass: number;
  resolution: number;
  limits: readonly Limit[];
  conditions: Record<string, number>;
}

export const weighingQuery = (asked: WeighingRequest, enabled: boolean) =>
  queryOptions({
    queryKey: ['weighing', asked],
    queryFn: async ({ signal }) => answerInLocale(await post<WeighingError>('/weighing', asked, { signal })),
    placeholderData: keepPreviousData,
    staleTime: forever,
    gcTime: 60_000,
    enabled,
  });

/** An element of an alloy to be replaced; by every other where no partners are named. */
export interface SubstituteRequest {
  composition: Amounts;
  replace: string;
  with?: readonly string[];
  limits: readonly Limit[];
  /** of the search whose alloy it is */
  space?: SearchSpace;
  conditions: Record<string, number>;
}

export const substituteQuery = (asked: SubstituteRequest, enabled: boolean) =>
  queryOptions({
    queryKey: ['substitute', asked],
    queryFn: async ({ signal }) =>
      (await post<{ items: Substitute[] }>('/substitute', asked, { signal })).items,
    placeholderData: keepPreviousData,
    staleTime: forever,
    gcTime: 60_000,
    enabled,
  });
