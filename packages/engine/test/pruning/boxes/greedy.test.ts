import fc from 'fast-check';
import { expect, test } from 'vitest';
import { greatestSum, leastSum, sortPlaces, startOrder } from '../../../src/pruning/boxes/greedy.ts';

const element = fc.record({ width: fc.integer({ min: 0, max: 4 }), slope: fc.integer({ min: -9, max: 9 }) });

/** All Σ slopeᵢ yᵢ of whole numbers y within their widths that share out the rest. */
function sums(widths: readonly number[], slopes: readonly number[], rest: number): number[] {
  if (widths.length === 0) return rest === 0 ? [0] : [];
  const [width, ...others] = widths as [number, ...number[]];
  const [slope, ...otherSlopes] = slopes as [number, ...number[]];
  return Array.from({ length: Math.min(width, rest) + 1 }, (_, given) =>
    sums(others, otherSlopes, rest - given).map((sum) => sum + given * slope),
  ).flat();
}

test('the ends of a sum are those of all ways to share out, whatever the elements were sorted by before', () => {
  fc.assert(
    fc.property(
      fc.array(element, { minLength: 1, maxLength: 5 }),
      fc.array(fc.integer({ min: -9, max: 9 }), { minLength: 5, maxLength: 5 }),
      fc.integer({ min: 0, max: 3 }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      (elements, before, offset, share) => {
        const widths = elements.map(({ width }) => width);
        const most = widths.reduce((sum, width) => sum + width, 0);
        const rest = Math.round(share * most);
        const room = { elements: elements.length, width: widths, rest };
        const slopes = new Float64Array(offset + elements.length);
        const order = new Int32Array(offset + elements.length);
        startOrder(order, offset, elements.length);
        for (const numbers of [before, elements.map(({ slope }) => slope)]) {
          for (let at = 0; at < elements.length; at += 1) slopes[offset + at] = numbers[at]!;
          sortPlaces(slopes, offset, order, offset, elements.length);
          const all = sums(widths, numbers.slice(0, elements.length), rest);
          expect(leastSum(slopes, offset, order, offset, room) + 0).toBe(Math.min(...all) + 0);
          expect(greatestSum(slopes, offset, order, offset, room) + 0).toBe(Math.max(...all) + 0);
        }
      },
    ),
  );
});
