import type { SearchSpecification } from '@tiegel/contract';

/**
 * Whether a search leaves out what cannot matter. One that counts each limit, or seeks a front,
 * looks at every point.
 */
export function isPruned({ tally, front }: Pick<SearchSpecification, 'tally' | 'front'>): boolean {
  return tally !== 'each' && front === undefined;
}
