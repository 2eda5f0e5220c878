import type { Outcome, Tally } from '@tiegel/contract';

/** The counts of an outcome beside its points. */
export type Counted = Pick<Outcome, 'passed' | 'passedEach' | 'outside'>;

/** What a search with this tally counts, of all that was counted; null in the place of the rest. */
export function counted(tally: Tally, { passed, passedEach, outside }: Counted): Counted {
  if (tally === 'none') return { passed: null, passedEach: null, outside: null };
  return tally === 'all' ? { passed, passedEach: null, outside: null } : { passed, passedEach, outside };
}
