import { expect, test } from 'vitest';
import { formatInterval } from '../../src/numbers/formatInterval.ts';

test.each([
  [8.99992, 9.00008, 2, '8.99992 to 9.00008'],
  [7.9, 8.4, 2, '7.90 to 8.40'],
  [100, 3000, 0, '100 to 3000'],
  [1, 1, 1, '1.0 to 1.0'],
])('%f to %f with at least %i decimals is told apart', (least, greatest, decimals, text) => {
  expect(formatInterval(least, greatest, decimals)).toBe(text);
});
