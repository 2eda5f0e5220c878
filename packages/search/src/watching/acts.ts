import type { Schedule, SearchView } from '@tiegel/contract';
import type { SearchChange, SearchRecord, Store } from '@tiegel/store';
import { type SearchEvent, stateAfter } from '../states.ts';
import type { Work } from '../working/work.ts';
import type { Records } from './records.ts';
import type { Watchers } from './watchers.ts';

/** What people do to a search. Each throws search/unknown and search/not-possible. */
export interface Acts {
  pause(id: string): SearchView;
  resume(id: string): SearchView;
  cancel(id: string): SearchView;
  /** Works on a search by another timetable; one that is over keeps it for the record. */
  schedule(id: string, schedule: Schedule): SearchView;
}

export function acts(store: Store, work: Work, { known, view }: Records, changed: Watchers['changed']): Acts {
  /** Writes down the state that follows, then does what belongs to it; nothing where it is so already. */
  function act(id: string, event: SearchEvent, change: SearchChange, then: (record: SearchRecord) => void) {
    const record = known(id);
    const state = stateAfter(record.state, event);
    if (state === null) return view(id);
    const write = event === 'cancel' ? store.searches.conclude : store.searches.change;
    write(record.number, { state, reason: null, ...change });
    work.forgetTrouble(id);
    then(record);
    changed(id, 'state');
    return view(id);
  }

  return {
    pause: (id) => act(id, 'pause', {}, () => work.stop(id)),
    schedule(id, schedule) {
      const { number } = known(id);
      store.searches.change(number, { schedule });
      work.reschedule(id, schedule);
      changed(id, 'state');
      return view(id);
    },
    cancel: (id) =>
      act(id, 'cancel', { finishedAt: new Date().toISOString() }, (record) => {
        work.stop(id);
        // One that was paused, or failed, while its candidates were stored is not worked on, and has some.
        work.tidy([record]);
      }),
    resume(id) {
      const record = known(id);
      // Left behind by a program that ended, and not taken up when this one began.
      const left = stateAfter(record.state, 'resume') === null && work.underway(id) === undefined;
      if (left) {
        work.carry(record);
        return view(id);
      }
      return act(id, 'resume', { finishedAt: null }, ({ number }) => {
        store.ledger.forgetFailures(number);
        work.carry(known(id));
      });
    },
  };
}
