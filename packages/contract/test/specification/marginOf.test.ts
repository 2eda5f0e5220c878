import { expect, test } from 'vitest';
import { marginOf } from '../../src/specification/marginOf.ts';

test.each([
  [{ quantity: 'density', max: 8 }, 7.5, { met: true, margin: 0.5 }],
  [{ quantity: 'density', max: 8 }, 8.5, { met: false, margin: -0.5 }],
  [{ quantity: 'mixingEnthalpy', min: -15, max: 5 }, -13, { met: true, margin: 2 }],
  [{ quantity: 'mixingEnthalpy', min: -15, max: 5 }, 4, { met: true, margin: 1 }],
  [{ quantity: 'mixingEnthalpy', min: -15, max: 5 }, -15 - 1e-13, { met: true, margin: 0 }],
  [{ quantity: 'density', max: 8 }, 8 + 1e-9, { met: false, margin: -1e-9 }],
  [{ quantity: 'cost', max: 8 }, null, { met: false, margin: null }],
])('%o at %d', (limit, value, { met, margin }) => {
  const found = marginOf(limit, value);
  expect(found.met).toBe(met);
  if (margin === null) expect(found.margin).toBeNull();
  else expect(found.margin).toBeCloseTo(margin, 12);
});

// 7e-14 beyond it lies on the limit: met, and neither above nor below it by anything.
test('on a limit the margin is 0 and not what rounding leaves', () => {
  expect(marginOf({ quantity: 'density', max: 8 }, 8 + 7e-14)).toEqual({ met: true, margin: 0 });
  expect(marginOf({ quantity: 'mixingEnthalpy', min: -15 }, -15 - 1e-12)).toEqual({ met: true, margin: 0 });
});
