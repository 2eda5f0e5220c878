import { expect, test } from 'vitest';
import { inTurns, turnMs } from '../src/inTurns.ts';

/** Steps that each take longer than a turn. */
function* slowSteps(count: number): Generator<undefined, string> {
  for (let step = 0; step < count; step += 1) {
    for (const since = performance.now(); performance.now() - since <= turnMs; );
    yield;
  }
  return 'found';
}

test('everybody else has a turn between slow steps, and the end is what the work gives', async () => {
  let turns = 0;
  let over = false;
  const count = () => {
    turns += 1;
    if (!over) setImmediate(count);
  };
  setImmediate(count);
  expect(await inTurns(slowSteps(5))).toBe('found');
  over = true;
  expect(turns).toBeGreaterThanOrEqual(5);
});
