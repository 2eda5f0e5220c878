import { type UseQueryResult, useQueries } from '@tanstack/react-query';
import type { Candidate } from '@tiegel/contract';
import { useCallback } from 'react';
import { candidateQuery } from '../../server/queries.ts';

/** Where a marked candidate lies in a scatter. */
export interface MarkedPoint {
  rank: number;
  x: number;
  y: number;
}

/**
 * The marked candidates of a search in a scatter of two quantities, each asked for by itself: of many candidates
 * the scatter has only a sample, and a filter may leave them out. One without a value of both is not among them.
 */
export function useMarkedPoints(searchId: string, marked: readonly string[], x: string, y: string) {
  const combine = useCallback(
    (answers: UseQueryResult<Candidate>[]) => {
      const failed = answers.filter(({ error }) => error);
      return {
        points: answers.flatMap(({ data }): MarkedPoint[] => {
          const [valueX, valueY] = [data?.quantities[x] ?? null, data?.quantities[y] ?? null];
          return data === undefined || valueX === null || valueY === null
            ? []
            : [{ rank: data.rank, x: valueX, y: valueY }];
        }),
        error: failed[0]?.error ?? null,
        again: () => Promise.all(failed.map(({ refetch }) => refetch())),
      };
    },
    [x, y],
  );
  return useQueries({ queries: marked.map((text) => candidateQuery(searchId, text)), combine });
}
