import type { Front } from '@tiegel/contract';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { mostMembers, type Preferences, strideOf } from '../../src/front/frontList.ts';
import { frontPoints } from '../../src/front/frontPoints.ts';
import { mergeFronts } from '../../src/front/mergeFronts.ts';

interface Point {
  score: number;
  system: number;
  point: number;
  values: number[];
}

const preferences = fc.array(fc.constantFrom('high' as const, 'low' as const), {
  minLength: 2,
  maxLength: 4,
});

/** Few different values, so that points are equal in some or in all of them; some without a value. */
const value = fc.oneof(
  { weight: 20, arbitrary: fc.integer({ min: 0, max: 6 }) },
  { weight: 5, arbitrary: fc.double({ min: 0, max: 6, noNaN: true }) },
  { weight: 1, arbitrary: fc.constant(Number.NaN) },
);
const asked = preferences.chain((prefer) =>
  fc.tuple(
    fc.constant(prefer),
    fc
      .array(fc.array(value, { minLength: prefer.length, maxLength: prefer.length }), {
        maxLength: 120,
        size: 'max',
      })
      .map((all) =>
        all.map((values, number) => ({ score: number / 7, system: number % 9, point: number, values })),
      ),
  ),
);

function frontOf(points: readonly Point[], prefer: Preferences): Front {
  const front = frontPoints(prefer);
  for (const { score, system, point, values } of points) {
    front.offer(score, system, point, Float64Array.from(values));
  }
  return front.finish();
}

/** By the definition, every point against every other; the members in the order of a front. */
function bruteForce(points: readonly Point[], prefer: Preferences): number[] {
  const better = (one: Point, other: Point, place: number) =>
    prefer[place] === 'high'
      ? one.values[place]! - other.values[place]!
      : other.values[place]! - one.values[place]!;
  const whole = points.filter(({ values }) => values.every(Number.isFinite));
  const places = prefer.map((_, place) => place);
  const members = whole.filter(
    (one) =>
      !whole.some(
        (other) =>
          places.every((place) => better(other, one, place) >= 0) &&
          places.some((place) => better(other, one, place) > 0),
      ),
  );
  return members
    .toSorted((one, other) => {
      for (const place of places) if (better(one, other, place) !== 0) return -better(one, other, place);
      return one.system - other.system || one.point - other.point;
    })
    .flatMap(({ score, system, point, values }) => [score, system, point, ...values]);
}

test('a front is what nothing dominates, equal points included', () => {
  fc.assert(
    fc.property(asked, ([prefer, points]) => {
      const found = frontOf(points, prefer);
      expect([...found.members]).toEqual(bruteForce(points, prefer));
      expect(found.cut).toBeNull();
    }),
    { numRuns: 400 },
  );
});

test('whatever number of points is gathered before they are made one front, a dominated one is none of it', () => {
  const point = (values: number[], number: number) => ({ score: 0, system: 0, point: number, values });
  const line = Array.from({ length: 2100 }, (_, at) => [at, 2100 - at]);
  for (const before of [2047, 2048, 2049]) {
    const behind = [[5.5, 2095.5], ...line.slice(before)];
    const points = [...line.slice(0, before), ...behind].map(point);
    const prefer = ['low', 'low'] as const;
    expect([...frontOf(points, prefer).members]).toEqual(bruteForce(points, prefer));
  }
});

test('fronts of parts merge to that of the whole, in any order', () => {
  fc.assert(
    fc.property(asked, fc.array(fc.nat({ max: 2 }), { minLength: 120 }), ([prefer, points], parts) => {
      const [one, two, three] = [0, 1, 2].map((part) =>
        frontOf(
          points.filter((_, at) => parts[at] === part),
          prefer,
        ),
      ) as [Front, Front, Front];
      const merge = (left: Front, right: Front) => mergeFronts(left, right, prefer);
      const merged = merge(merge(one, two), three);
      expect([...merged.members]).toEqual(bruteForce(points, prefer));
      expect(merge(three, merge(two, one))).toStrictEqual(merged);
    }),
    { numRuns: 200 },
  );
});

test('a front of many thousand points is that of the definition', () => {
  for (const prefer of [
    ['high', 'low'],
    ['low', 'low', 'high'],
    ['high', 'high', 'low', 'low'],
  ] as const) {
    let state = 1;
    const next = () => {
      state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
      return state / 2 ** 32;
    };
    const points = Array.from({ length: 12_000 }, (_, point) => ({
      ...{ score: next(), system: point % 100, point },
      values: prefer.map(() => Math.round(next() * 400) / 400),
    }));
    const found = frontOf(points, prefer);
    const members = new Set([...found.members].filter((_, at) => at % strideOf(prefer) === 2));
    const sample = points.filter(({ point }) => point % 40 === 0 || (members.has(point) && point % 4 === 0));
    // Every point of the sample against all points: too many pairs for all of them.
    for (const one of sample) {
      const dominated = points.some(
        (other) =>
          prefer.every((p, k) =>
            p === 'high' ? other.values[k]! >= one.values[k]! : other.values[k]! <= one.values[k]!,
          ) && prefer.some((_, k) => other.values[k] !== one.values[k]),
      );
      expect(members.has(one.point)).toBe(!dominated);
    }
  }
});

test('of more members than are kept the first ones stay, nothing before the cut is missing, and it is said', () => {
  const prefer = ['low', 'low'] as const;
  const line = (first: number, count: number) =>
    Array.from({ length: count }, (_, at) => {
      const place = (first + at) / 4;
      return { score: 0, system: 0, point: first + at, values: [place, 1e6 - place] };
    });
  const one = frontOf(line(0, 70_000).toReversed(), prefer);
  const two = frontOf(line(70_000, 70_000), prefer);
  const merged = mergeFronts(two, one, prefer);
  const stride = strideOf(prefer);
  expect(merged.members).toHaveLength(mostMembers * stride);
  expect(merged.members.at(-3)).toBe(mostMembers - 1);
  expect([...merged.cut!]).toEqual([...merged.members.subarray(-stride)]);
  const whole = frontOf(line(0, 140_000), prefer);
  expect(whole.members).toHaveLength(mostMembers * stride);
  expect(whole.members.at(-3)).toBe(mostMembers - 1);
  // A point far behind that dominates much of what was cut brings nothing back.
  const later = frontOf([{ score: 0, system: 1, point: 0, values: [90_000 / 4, 0] }], prefer);
  const end = mergeFronts(merged, later, prefer);
  expect(end.cut).toEqual(merged.cut);
  expect(end.members.at(-3)).toBe(0);
  expect(end.members).toHaveLength((90_000 + 1) * stride);
});
