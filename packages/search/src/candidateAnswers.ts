import { problem } from '@tiegel/contract';
import type { Store } from '@tiegel/store';
import { candidateSet, checkQuery, gridParts } from './candidateQueries.ts';
import type { Records } from './records.ts';
import type { Searches } from './searches.ts';

/** What is asked of the candidates of a search: see Searches. */
export function candidateAnswers(
  store: Store,
  { known, view }: Records,
): Pick<Searches, 'candidates' | 'candidate' | 'export'> {
  return {
    candidates(id, query) {
      const record = known(id);
      const set = candidateSet(record);
      checkQuery(query, set.columns);
      const { passed, points } = record.counts;
      return { ...store.candidates.page(set, query), among: { kept: set.kept, passed, points } };
    },
    candidate(id, composition) {
      const record = known(id);
      const set = candidateSet(record);
      const sought = gridParts(composition, record);
      const found = sought && store.candidates.find(set, sought.symbols, sought.parts);
      if (found === null) throw problem('candidate/unknown', { composition });
      return found;
    },
    export(id, query) {
      const set = candidateSet(known(id));
      checkQuery(query, set.columns);
      return { head: { search: view(id), columns: set.columns }, rows: store.candidates.stream(set, query) };
    },
  };
}
