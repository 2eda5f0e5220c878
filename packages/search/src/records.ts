import type { SearchView } from '@tiegel/contract';
import { problem } from '@tiegel/contract/terms';
import type { JoinedStore, SearchRecord } from '@tiegel/store';
import { textOf } from './textOf.ts';
import { viewOf } from './viewOf.ts';
import type { Work } from './work.ts';

/** The searches as they stand. */
export interface Records {
  /** Throws search/unknown. */
  known(id: string): SearchRecord;
  /** Throws search/unknown. */
  view(id: string): SearchView;
  /** Newest first. */
  list(): SearchView[];
}

export function records(store: JoinedStore, work: Pick<Work, 'trouble' | 'underway' | 'waits'>): Records {
  /** A search that the store refused something of is paused, whatever the store could still write down. */
  function standing(record: SearchRecord): SearchRecord {
    const trouble = work.trouble(record.id);
    if (trouble !== undefined) return { ...record, state: 'paused', reason: textOf(trouble) };
    // Cannot be written down, for that is what it waits for.
    const reason = work.waits(record.id);
    return reason === null ? record : { ...record, reason };
  }
  function known(id: string): SearchRecord {
    const record = store.searches.find(id);
    if (record === null) throw problem('search/unknown', { id });
    return standing(record);
  }
  return {
    known,
    view: (id) => viewOf(known(id), work.underway(id)),
    list: () => store.searches.list().map((record) => viewOf(standing(record), work.underway(record.id))),
  };
}
