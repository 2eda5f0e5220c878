import { expect, test } from 'vitest';
import { keptFor } from '../../src/alloys/keptFor.ts';

test('what failed is told to all who waited, and tried again', async () => {
  let tries = 0;
  const doubled = keptFor(function* (number: number) {
    yield;
    tries += 1;
    if (tries === 1) throw new Error('not yet');
    return 2 * number;
  });
  const both = await Promise.allSettled([doubled(4), doubled(4)]);
  expect(both.map(({ status }) => status)).toEqual(['rejected', 'rejected']);
  expect([await doubled(4), await doubled(4), tries]).toEqual([8, 8, 2]);
});
