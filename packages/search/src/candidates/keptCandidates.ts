import type { JoinedStore } from '@tiegel/store';
import type { Searches } from '../searches.ts';
import { records } from '../watching/records.ts';
import { candidateAnswers } from './candidateAnswers.ts';
import { candidateSweeps } from './candidateSweeps.ts';

/** The searches of a store and their candidates, for who only reads them: no search goes on. Throws as those of Searches do. */
export function keptCandidates(
  store: JoinedStore,
): Pick<
  Searches,
  | 'list'
  | 'view'
  | 'ready'
  | 'candidates'
  | 'candidate'
  | 'candidateAt'
  | 'export'
  | 'values'
  | 'elementUse'
  | 'tradeOff'
  | 'searchDistributions'
  | 'keptSystems'
> {
  const standing = records(store, {
    trouble: () => undefined,
    underway: () => undefined,
    waits: () => null,
    isBrokenOff: ({ state }) => (state === 'waiting' || state === 'running') && !store.isWorkedOn(),
  });
  const { list, view } = standing;
  return { list, view, ...candidateAnswers(store, standing), ...candidateSweeps(store, standing) };
}
