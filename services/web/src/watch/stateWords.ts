import type { SearchState } from '@tiegel/contract';

/** The state of a search in words, with a sign that tells it without colour. */
export const stateWords: Record<SearchState, { sign: string; word: string }> = {
  waiting: { sign: '○', word: 'Waiting' },
  running: { sign: '▶', word: 'Running' },
  paused: { sign: '❚❚', word: 'Paused' },
  done: { sign: '✓', word: 'Done' },
  cancelled: { sign: '×', word: 'Cancelled' },
  failed: { sign: '!', word: 'Failed' },
};
