import type { SearchView } from '@tiegel/contract';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { watchers } from '../../src/watching/watchers.ts';

beforeEach(() => void vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout', 'performance'] }));
afterEach(() => void vi.useRealTimers());

/** Watchers of searches whose view is only a number. */
function watched() {
  let sequence = 0;
  const all = watchers(() => ({ view: {} as SearchView, sequence }));
  const heard: number[] = [];
  return {
    ...all,
    heard,
    change(what: 'progress' | 'state') {
      sequence += 1;
      all.changed('one', what);
    },
    note: (_: SearchView, number: number) => void heard.push(number),
  };
}

test('whoever watches hears at once how things stand', () => {
  const { watch, heard, note } = watched();
  watch('one', note);
  expect(heard).toEqual([0]);
});

test('progress is told at most twice a second, and the last of it always', () => {
  const { watch, heard, note, change } = watched();
  watch('one', note);
  for (let step = 0; step < 100; step += 1) {
    change('progress');
    vi.advanceTimersByTime(20);
  }
  vi.advanceTimersByTime(500);
  // Two seconds: at once, then each half second.
  expect(heard.length).toBeGreaterThanOrEqual(5);
  expect(heard.length).toBeLessThanOrEqual(7);
  expect(heard.at(-1)).toBe(100);
});

test('a change of state is told at once', () => {
  const { watch, heard, note, change } = watched();
  watch('one', note);
  change('progress');
  change('progress');
  change('state');
  expect(heard.at(-1)).toBe(3);
  vi.advanceTimersByTime(1000);
  expect(heard.filter((number) => number === 3)).toHaveLength(1);
});

test('who stopped hears nothing more, others do', () => {
  const { watch, heard, note, change } = watched();
  const others: number[] = [];
  const stop = watch('one', note);
  watch('one', (_, number) => others.push(number));
  stop();
  change('state');
  expect(heard).toEqual([0]);
  expect(others).toEqual([0, 1]);
});

test('what happens to another search is not told', () => {
  const { watch, heard, note, changed } = watched();
  watch('one', note);
  changed('two', 'state');
  expect(heard).toEqual([0]);
});
