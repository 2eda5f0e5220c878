import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { greatestFill, leastFill } from '../../src/bounds/fill.ts';
import { boxOf } from '../../src/bounds/region.ts';
import type { Region } from '../../src/index.ts';
import { everyPoint } from '../fixtures/everyPoint.ts';
import { type Random, random } from '../fixtures/random.ts';

function smallRegion(source: Random, kind: 'required' | 'uniform' | 'mixed'): Region {
  const uniform = { min: source.whole(1, 2), max: source.whole(2, 5) };
  const elements = [...Array(source.whole(2, 5)).keys()].map((index) => {
    const min = source.whole(1, 2);
    const bounds = kind === 'uniform' ? uniform : { min, max: min + source.whole(0, 5) };
    return { index, ...bounds, optional: kind !== 'required' && source.fraction() < 0.6 };
  });
  const fewest = source.whole(1, 3);
  return {
    total: source.whole(4, 9),
    elements,
    components: { min: fewest, max: fewest + source.whole(0, 3) },
  };
}

/** The greatest and least Σ (charge + rate x) over all compositions, one by one. */
function extremes(region: Region, rates: number[], charges: number[]): [least: number, greatest: number] {
  const values = everyPoint(region).map(({ members, amounts }) =>
    members.reduce((sum, member, k) => sum + charges[member]! + rates[member]! * amounts[k]!, 0),
  );
  return [Math.min(...values), Math.max(...values)];
}

describe('the greedy fill', () => {
  test.for(['required', 'uniform'] as const)('is exact where elements are all %s', (kind) => {
    let filled = 0;
    fc.assert(
      fc.property(fc.integer(), (seed) => {
        const source = random(seed);
        const region = smallRegion(source, kind);
        const rates = region.elements.map(() => source.whole(-9, 9));
        const [least, greatest] = extremes(
          region,
          rates,
          rates.map(() => 0),
        );
        if (!Number.isFinite(least)) return;
        filled++;
        expect(greatestFill(boxOf(region), rates)).toBe(greatest);
        expect(leastFill(boxOf(region), rates)).toBe(least);
      }),
      { numRuns: 400 },
    );
    expect(filled).toBeGreaterThan(100);
  });

  test('bounds every composition of any region, charges included', () => {
    let filled = 0;
    fc.assert(
      fc.property(fc.integer(), (seed) => {
        const source = random(seed);
        const region = smallRegion(source, 'mixed');
        const rates = region.elements.map(() => source.whole(-9, 9));
        const charge = source.whole(-9, 9);
        const charges = rates.map(() => (source.fraction() < 0.5 ? charge : source.whole(-9, 9)));
        const [least, greatest] = extremes(region, rates, charges);
        if (!Number.isFinite(least)) return;
        filled++;
        expect(greatestFill(boxOf(region), rates, charges)).toBeGreaterThanOrEqual(greatest);
        expect(leastFill(boxOf(region), rates, charges)).toBeLessThanOrEqual(least);
      }),
      { numRuns: 400 },
    );
    expect(filled).toBeGreaterThan(100);
  });

  test('of a region without compositions is infinite the wrong way round', () => {
    const element = { min: 2, max: 3, optional: false };
    const tooFull = {
      total: 3,
      elements: [
        { index: 0, ...element },
        { index: 1, ...element },
      ],
      components: { min: 2, max: 2 },
    };
    expect(greatestFill(boxOf(tooFull), [1, 2])).toBe(Number.NEGATIVE_INFINITY);
    expect(leastFill(boxOf({ ...tooFull, total: 7 }), [1, 2])).toBe(Number.POSITIVE_INFINITY);
    expect(greatestFill(boxOf({ ...tooFull, components: { min: 3, max: 3 }, total: 5 }), [1, 2])).toBe(
      Number.NEGATIVE_INFINITY,
    );
  });
});
