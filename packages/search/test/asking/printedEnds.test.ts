import fc from 'fast-check';
import { expect, test } from 'vitest';
import { printedEnds } from '../../src/asking/printedEnds.ts';

test('ends have the decimals of the quantity and are never stricter than what is reached', () => {
  const reached = { low: 5.184957107504087, high: 8.50489486395507 };
  expect(printedEnds(reached, { min: 9 }, 2)).toEqual({ low: '5.18', high: '8.51' });
  expect(printedEnds({ low: -15.31, high: -0.004 }, { min: 1 }, 1)).toEqual({ low: '−15.4', high: '0.0' });
});

test('a limit that cannot be met lies outside in print, too', () => {
  const reached = { low: 5.184957107504087, high: 8.50489486395507 };
  expect(printedEnds(reached, { min: 8.505 }, 2)).toEqual({ low: '5.1849', high: '8.5049' });
  expect(printedEnds(reached, { max: 5.1849 }, 2)).toEqual({ low: '5.18495', high: '8.50490' });
});

test('whatever the values, what is reached lies inside', () => {
  fc.assert(
    fc.property(
      fc.double({ min: -1e5, max: 1e5, noNaN: true }),
      fc.double({ min: 0, max: 1e5, noNaN: true }),
      fc.integer({ min: 0, max: 4 }),
      (low, width, decimals) => {
        const high = low + width;
        const ends = printedEnds({ low, high }, { min: high + 1 }, decimals);
        const read = (text: string) => Number(text.replace('−', '-'));
        expect(read(ends.low)).toBeLessThanOrEqual(low);
        expect(read(ends.high)).toBeGreaterThanOrEqual(high);
      },
    ),
  );
});
