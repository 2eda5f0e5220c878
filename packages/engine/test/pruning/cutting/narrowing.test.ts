import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Box, tightBox } from '../../../src/pruning/boxes/box.ts';
import { type LineConditions, lineConditions } from '../../../src/pruning/cutting/lineConditions.ts';
import { narrowing } from '../../../src/pruning/cutting/narrowing.ts';

/** A function of the parts: constant + Σ slopeᵢ xᵢ. */
interface Condition {
  constant: number;
  slopes: number[];
}

const mostElements = 5;

/** Conditions as the search has them: counted from the lower corner of the box. */
function counted(conditions: readonly Condition[], { low }: Box): LineConditions {
  const made = lineConditions(conditions.length, mostElements);
  for (const [at, { constant, slopes }] of conditions.entries()) {
    made.slopes[at]!.set(slopes);
    const parts = low.map((amount, place) => amount * slopes[place]!);
    made.constants[at] = parts.reduce((sum, one) => sum + one, constant);
    made.sizes[at] = parts.reduce((sum, one) => sum + Math.abs(one), Math.abs(constant));
  }
  made.count = conditions.length;
  return made;
}

function pointsOf({ low, high, total }: Box): number[][] {
  const points: number[][] = [];
  const add = (fixed: number[], left: number): void => {
    const at = fixed.length;
    if (at === low.length) {
      if (left === 0) points.push(fixed);
      return;
    }
    for (let parts = low[at]!; parts <= Math.min(high[at]!, left); parts += 1)
      add([...fixed, parts], left - parts);
  };
  add([], total);
  return points;
}

const isWithin = (point: readonly number[], { low, high }: Box) =>
  point.every((parts, at) => parts >= low[at]! && parts <= high[at]!);

const dot = (slopes: readonly number[], point: readonly number[]) =>
  point.reduce((sum, parts, at) => sum + parts * slopes[at]!, 0);

/** Boxes, and conditions with whole slopes in some unit, of which some are exactly met at a point of the box. */
const cases = fc
  .record({
    sides: fc.array(fc.tuple(fc.integer({ min: 0, max: 30 }), fc.integer({ min: 0, max: 9 })), {
      minLength: 2,
      maxLength: mostElements,
    }),
    taken: fc.double({ min: 0, max: 1, noNaN: true }),
    conditions: fc.array(
      fc.record({
        slopes: fc.array(fc.integer({ min: -9, max: 9 }), {
          minLength: mostElements,
          maxLength: mostElements,
        }),
        unit: fc.constantFrom(1, 0.1, 0.7, 1 / 3, 1e-6, 1e6),
        /** Added to all slopes, which says nothing, since all amounts make the whole, but is rounded. */
        base: fc.constantFrom(0, 0, 1e6),
        at: fc.nat(),
        off: fc.constantFrom(0, 0, 0, 1, -1, 5, -5, 20),
      }),
      { minLength: 1, maxLength: 4 },
    ),
  })
  .map(({ sides, taken, conditions }) => {
    const low = sides.map(([least]) => least);
    const high = sides.map(([least, width]) => least + width);
    const [least, most] = [low, high].map((bounds) => bounds.reduce((sum, one) => sum + one, 0));
    const box = tightBox(low, high, least! + Math.floor(taken * (most! - least!)))!;
    const points = pointsOf(box);
    // The truth is in whole numbers; what the search gets is rounded.
    const whole = conditions.map(({ slopes, at, off }) => {
      const own = slopes.slice(0, low.length);
      return { slopes: own, constant: off - dot(own, points[at % points.length]!) };
    });
    const rounded = conditions.map(({ unit, base }, at) => ({
      slopes: whole[at]!.slopes.map((slope) => (slope + base) * unit),
      constant: (whole[at]!.constant - base * box.total) * unit,
    }));
    return { box, points, whole, rounded };
  });

test('a narrowed box has every point that meets all conditions, also those that meet one by a hair', () => {
  const { narrowed } = narrowing(mostElements);
  let [some, left, none] = [0, 0, 0];
  fc.assert(
    fc.property(cases, ({ box, points, whole, rounded }) => {
      const met = points.filter((point) =>
        whole.every(({ slopes, constant }) => constant + dot(slopes, point) <= 0),
      );
      const part = narrowed(box, counted(rounded, box));
      some += points.length;
      if (part === null) {
        expect(met).toEqual([]);
        none += 1;
        return;
      }
      expect(met.filter((point) => !isWithin(point, part))).toEqual([]);
      expect(part).toEqual(tightBox(part.low, part.high, part.total));
      const inPart = pointsOf(part);
      expect(inPart.every((point) => isWithin(point, box))).toBe(true);
      left += inPart.length;
    }),
    { numRuns: 3000 },
  );
  // Leaving every box as it is would be right as well: most points must go, and many boxes whole.
  expect(left).toBeLessThan(0.5 * some);
  expect(none).toBeGreaterThan(300);
}, 120_000);

test('a box without a condition, or with one that all points meet, stays the same object', () => {
  const { narrowed } = narrowing(mostElements);
  const box = tightBox([0, 0, 0], [10, 10, 10], 15)!;
  expect(narrowed(box, counted([], box))).toBe(box);
  expect(narrowed(box, counted([{ constant: -100, slopes: [1, 2, 3] }], box))).toBe(box);
});

test('bounds of every element are cut to where one condition can be met', () => {
  const { narrowed } = narrowing(mostElements);
  const box = tightBox([0, 0, 0], [10, 10, 10], 10)!;
  // x + 2y + 3z ≤ 13 with x + y + z = 10: y + 2z ≤ 3.
  const part = narrowed(box, counted([{ constant: -13, slopes: [1, 2, 3] }], box));
  expect(part).toEqual({ low: [7, 0, 0], high: [10, 3, 1], total: 10 });
  // The same from the other side: x + 2y + 3z ≥ 27.
  const other = narrowed(box, counted([{ constant: 27, slopes: [-1, -2, -3] }], box));
  expect(other).toEqual({ low: [0, 0, 7], high: [1, 3, 10], total: 10 });
});

test('the element that takes the last of what there is gets bounds from both sides', () => {
  const { narrowed } = narrowing(mostElements);
  const box = tightBox([0, 0, 0], [4, 10, 10], 10)!;
  // Least at (4, 6, 0), where it is 16; x + 2y + 3z ≤ 18 leaves at most 2 to move from x to y or from y to z.
  const part = narrowed(box, counted([{ constant: -18, slopes: [1, 2, 3] }], box));
  expect(part).toEqual({ low: [2, 4, 0], high: [4, 8, 2], total: 10 });
  // Two to take from: less than what both may give.
  const four = tightBox([0, 0, 0, 0], [4, 4, 10, 10], 12)!;
  const ofFour = narrowed(four, counted([{ constant: -18, slopes: [1, 1, 2, 3] }], four));
  expect(ofFour).toEqual({ low: [2, 2, 2, 0], high: [4, 4, 6, 2], total: 12 });
});

test('conditions that each can be met, but not together, leave nothing', () => {
  const { narrowed } = narrowing(mostElements);
  const box = tightBox([0, 0, 0, 0], [20, 20, 20, 20], 40)!;
  const layer = (least: number, most: number) =>
    counted(
      [
        { constant: least, slopes: [-1, -2, -3, -4] },
        { constant: -most, slopes: [1.01, 2, 3, 4] },
      ],
      box,
    );
  expect(narrowed(box, layer(100, 99))).toBeNull();
  expect(narrowed(box, layer(100, 101))).not.toBeNull();
});

test('a condition that is next to nothing beside another one cuts off nothing', () => {
  const { narrowed } = narrowing(mostElements);
  const box = tightBox([0, 0, 0, 0, 0], [0, 0, 12, 12, 12], 17)!;
  // Met by all points. At its least point the other one is not: joined with a share as small, that is but roundings.
  const hardly = { constant: -Number.MIN_VALUE, slopes: [0, 0, 0, 0, 0] };
  const other = { constant: -2.2, slopes: [0.15, 0.2, 0.15, 0.1, 0.15] };
  const part = narrowed(box, counted([hardly, other], box));
  expect(part).toEqual(narrowed(box, counted([other], box)));
  expect(isWithin([0, 0, 0, 8, 9], part!)).toBe(true);
});
