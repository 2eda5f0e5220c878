import type { SearchState } from '@tiegel/contract';
import { problem } from '@tiegel/contract/terms';

/** What happens to a search: acts of a person (pause, resume, cancel), steps of the work (the others). */
export type SearchEvent = 'handOut' | 'rest' | 'pause' | 'resume' | 'cancel' | 'fail' | 'finish';

/**
 * The life of a search. Columns: what happens; an entry is the state that follows, `same` where
 * nothing changes, `refused` where a person is told that it is not possible.
 *
 * - waiting: accepted, resumed, or outside its hours; no chunk was handed out since.
 * - running: chunks are with workers, or its candidates are being stored.
 * - paused: nothing is handed out until it is resumed.
 * - done, cancelled: for good. failed: may be resumed, and goes on at its unfinished chunks.
 *
 * `handOut`, `rest`, `fail` and `finish` may come late, when a person has just paused or cancelled: they
 * are never refused.
 */
const transitions: Record<SearchState, Record<SearchEvent, SearchState | 'same' | 'refused'>> = {
  waiting: {
    ...{ handOut: 'running', rest: 'same', fail: 'failed', finish: 'done' },
    ...{ pause: 'paused', resume: 'same', cancel: 'cancelled' },
  },
  running: {
    ...{ handOut: 'same', rest: 'waiting', fail: 'failed', finish: 'done' },
    ...{ pause: 'paused', resume: 'same', cancel: 'cancelled' },
  },
  paused: {
    ...{ handOut: 'same', rest: 'same', fail: 'same', finish: 'same' },
    ...{ pause: 'same', resume: 'waiting', cancel: 'cancelled' },
  },
  done: {
    ...{ handOut: 'same', rest: 'same', fail: 'same', finish: 'same' },
    ...{ pause: 'refused', resume: 'refused', cancel: 'refused' },
  },
  cancelled: {
    ...{ handOut: 'same', rest: 'same', fail: 'same', finish: 'same' },
    ...{ pause: 'refused', resume: 'refused', cancel: 'same' },
  },
  failed: {
    ...{ handOut: 'same', rest: 'same', fail: 'same', finish: 'same' },
    ...{ pause: 'refused', resume: 'waiting', cancel: 'cancelled' },
  },
};

/** The state that follows, null where nothing changes. Throws search/not-possible. */
export function stateAfter(state: SearchState, event: SearchEvent): SearchState | null {
  const next = transitions[state][event];
  if (next === 'refused') throw problem('search/not-possible', { act: event, state });
  return next === 'same' ? null : next;
}
