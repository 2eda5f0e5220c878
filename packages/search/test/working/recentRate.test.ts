import { expect, test } from 'vitest';
import { recentRate } from '../../src/working/recentRate.ts';

const second = 1000;

test('points a second of late: what came before does not count any more', () => {
  const rate = recentRate();
  expect(rate.perSecond(0)).toBeNull();
  for (let at = 0; at <= 100; at += 1) rate.add(at < 50 ? 1 : 30, at * second);
  expect(rate.perSecond(100 * second)).toBe(30);
});

// Chunks of a search that leaves out regions may take a worker minutes.
test('outcomes that come once a minute have a rate, too', () => {
  const rate = recentRate();
  rate.add(600, 0);
  expect(rate.perSecond(30 * second)).toBeNull();
  rate.add(600, 60 * second);
  expect(rate.perSecond(60 * second)).toBe(10);
  rate.add(1200, 120 * second);
  expect(rate.perSecond(120 * second)).toBe(20);
});
