import type { SearchView } from '@tiegel/contract';
import { problem } from '@tiegel/contract/terms';
import type { JoinedStore, SearchRecord } from '@tiegel/store';
import { textOf } from '../working/textOf.ts';
import type { Work } from '../working/work.ts';
import { viewOf } from './viewOf.ts';

/** The searches as they stand. */
export interface Records {
  /** Throws search/unknown. */
  known(id: string): SearchRecord;
  /** Throws search/unknown. */
  view(id: string): SearchView;
  /** Newest first. */
  list(): SearchView[];
}

const brokenOff = (id: string) =>
  `It was broken off, and no program works on it. It goes on where it stopped when the service is started on this database, or by "searches resume ${id} --database FILE".`;

type Told = Pick<Work, 'trouble' | 'underway' | 'waits'> & {
  /** Whether whoever worked on it has gone without a word. Left out: this process works on all. */
  isBrokenOff?: (record: SearchRecord) => boolean;
};

export function records(store: Pick<JoinedStore, 'searches'>, work: Told): Records {
  /** A search that the store refused something of is paused, whatever the store could still write down. */
  function standing(record: SearchRecord): SearchRecord {
    const trouble = work.trouble(record.id);
    if (trouble !== undefined) return { ...record, state: 'paused', reason: textOf(trouble) };
    if (work.isBrokenOff?.(record)) return { ...record, state: 'paused', reason: brokenOff(record.id) };
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
