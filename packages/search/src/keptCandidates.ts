import type { Store } from '@tiegel/store';
import { candidateAnswers } from './candidateAnswers.ts';
import { records } from './records.ts';
import type { Searches } from './searches.ts';

/** The candidates of a store's searches, for who only reads them: no search goes on. Throws as Searches.candidates does. */
export function keptCandidates(store: Store): Pick<Searches, 'candidates'> {
  return candidateAnswers(store, records(store, { trouble: () => undefined, underway: () => undefined }));
}
