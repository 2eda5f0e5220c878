import type { Substitute } from '@tiegel/contract';
import { expect, test } from 'vitest';
import { ordered } from '../../src/alloy/replace/ordered.ts';
import { preferenceOf } from '../../src/alloy/replace/preferenceOf.ts';

const item = (density: number | null, change: number | null = null) =>
  ({ quantities: { density }, changes: { density: change }, phase: null }) as unknown as Substitute;
const ranked = (prefer: unknown) => ({ specification: { rank: [{ quantity: 'density', prefer }] } }) as never;

test('any column orders, and what has no value comes last either way', () => {
  const items = [item(3), item(null), item(1), item(2)];
  const densities = (rising: boolean) =>
    ordered(items, { by: 'density', rising }).map(({ quantities }) => quantities.density);
  expect(densities(true)).toEqual([1, 2, 3, null]);
  expect(densities(false)).toEqual([3, 2, 1, null]);
  expect(ordered(items, { by: 'likeness', rising: true })).toEqual(items);
});

test('a change is better or worse where the search ranks it, and neither where it does not', () => {
  expect(preferenceOf('density', ranked('low'), item(7, -1))).toBe(true);
  expect(preferenceOf('density', ranked('high'), item(7, -1))).toBe(false);
  expect(preferenceOf('density', ranked({ target: 7 }), item(7.5, -1))).toBe(true);
  expect(preferenceOf('density', ranked({ target: 7 }), item(7.5, 1))).toBe(false);
  expect(preferenceOf('density', ranked({ target: 7 }), item(6, -1))).toBe(false);
  expect(preferenceOf('cost', ranked('low'), item(7, -1))).toBeNull();
  expect(preferenceOf('density', null, item(7, -1))).toBeNull();
});
