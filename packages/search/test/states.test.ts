import { isOver, type SearchState, searchStates } from '@tiegel/contract';
import { expect, test } from 'vitest';
import { type SearchEvent, stateAfter } from '../src/states.ts';

const events: SearchEvent[] = ['handOut', 'rest', 'pause', 'resume', 'cancel', 'fail', 'finish'];

/** Every pair that leads somewhere else. */
const moves = new Map<string, SearchState>([
  ['waiting handOut', 'running'],
  ['waiting pause', 'paused'],
  ['waiting cancel', 'cancelled'],
  ['waiting fail', 'failed'],
  ['waiting finish', 'done'],
  ['running rest', 'waiting'],
  ['running pause', 'paused'],
  ['running cancel', 'cancelled'],
  ['running fail', 'failed'],
  ['running finish', 'done'],
  ['paused resume', 'waiting'],
  ['paused cancel', 'cancelled'],
  ['failed resume', 'waiting'],
  ['failed cancel', 'cancelled'],
]);

/** Every pair that a person is refused. */
const refusals = [
  ...['done pause', 'done resume', 'done cancel', 'cancelled pause', 'cancelled resume', 'failed pause'],
];

const pairs = searchStates.flatMap((state) => events.map((event) => [state, event] as const));

test.each(pairs)('%s, then %s', (state, event) => {
  const pair = `${state} ${event}`;
  if (refusals.includes(pair)) expect(() => stateAfter(state, event)).toThrow(/so one cannot/);
  else expect(stateAfter(state, event)).toBe(moves.get(pair) ?? null);
});

test('what is over never goes on by itself', () => {
  for (const state of searchStates.filter(isOver)) {
    for (const event of ['handOut', 'rest', 'fail', 'finish'] as const)
      expect(stateAfter(state, event)).toBeNull();
  }
});
