import { setImmediate } from 'node:timers/promises';
import type { CandidateQuery } from '@tiegel/contract';
import { problem } from '@tiegel/contract/terms';
import type { JoinedStore } from '@tiegel/store';
import type { Searches } from '../searches.ts';
import type { Records } from '../watching/records.ts';
import type { StoredNames } from './candidateColumns.ts';
import { candidateSet, checkQuery, gridParts } from './candidateQueries.ts';
import { ordersInMaking } from './ordersInMaking.ts';

/** What is asked of the candidates of a search: see Searches. */
export function candidateAnswers(
  store: JoinedStore,
  { known, view }: Records,
): Pick<Searches, 'ready' | 'ordersInMaking' | 'candidates' | 'candidate' | 'candidateAt' | 'export'> {
  const making = ordersInMaking(store);
  return {
    async ready(id, query) {
      const record = known(id);
      const { set, names } = candidateSet(record);
      checkQuery(query, record);
      const stored = inStore(query, names);
      const { order, direction } = query;
      if (order !== 'rank') await making.made(set, { order, direction, stored: stored.order });
      for (const _ of store.candidates.prepare(set, stored)) await setImmediate();
    },
    ordersInMaking: (id) => making.of(known(id).number),
    candidates(id, query) {
      const record = known(id);
      const { set, names } = candidateSet(record);
      checkQuery(query, record);
      const { items, next } = store.candidates.page(set, inStore(query, names));
      const { passed, points } = record.counts;
      return { items, next, among: { kept: set.kept, passed, points } };
    },
    candidate(id, composition) {
      const record = known(id);
      const { set } = candidateSet(record);
      const sought = gridParts(composition, record);
      const found = sought && store.candidates.find(set, sought.symbols, sought.parts);
      if (found === null) throw problem('candidate/unknown', { composition });
      return found;
    },
    candidateAt(id, rank) {
      const { set } = candidateSet(known(id));
      const found = store.candidates.page(set, { ...byRank, at: rank - 1 }).items[0];
      if (!found) throw problem('request/invalid', { what: `No candidate has the rank ${rank}` }, '/rank');
      return found;
    },
    export(id, query) {
      const record = known(id);
      const { set, names } = candidateSet(record);
      checkQuery(query, record);
      const rows = store.candidates.stream(set, inStore(query, names));
      return { head: { search: view(id), columns: record.columns }, rows };
    },
  };
}

const byRank: CandidateQuery = {
  ...{ ranges: [], has: [], without: [] },
  ...{ order: 'rank', direction: 'asc', limit: 1 },
};

/** A query by the names that the store has for its quantities. */
export function inStore(query: CandidateQuery, names: StoredNames): CandidateQuery {
  return {
    ...query,
    ranges: query.ranges.map((range) => ({ ...range, quantity: names.of(range.quantity) })),
    order: names.of(query.order),
  };
}
