import { expect, test } from 'vitest';
import { quickerWay } from '../../src/pruning/quickerWay.ts';

test('both ways are tried at first and again later, and every piece of work has one of them', () => {
  const ways = quickerWay('one', 'other');
  const given = Array.from({ length: 200 }, () => {
    const way = ways.next();
    ways.done(1);
    return way;
  });
  expect(given.slice(0, 8)).toEqual([...Array(4).fill('one'), ...Array(4).fill('other')]);
  expect(new Set(given.slice(8))).toEqual(new Set(['one', 'other']));
});
