import { expect, test } from 'vitest';
import { filledBins } from '../../src/evidence/filledBins.ts';

test('a bin without alloys is not drawn, one in which nothing happened is', () => {
  const empty = { from: 0, to: 0.1, count: 0, said: null, happened: null };
  const filled = { from: 0.1, to: 0.2, count: 2, said: 0.15, happened: 0 };
  expect(filledBins([empty, filled])).toEqual([filled]);
});
