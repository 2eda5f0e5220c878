import { expect, test } from 'vitest';
import { dragRange } from '../../src/ask/sample/dragRange.ts';

test('the range holds values and near bounds, ends on round values and has some 200 steps', () => {
  expect(dragRange([6.1, 8.7, null], [null, 8], 2)).toEqual({ from: 6, to: 9, step: 0.01 });
  expect(dragRange([6.1, 8.7], [null, 10.2], 2)!.to).toBeGreaterThanOrEqual(10.2);
});

test('a bound far away is left outside, so that the values stay readable', () => {
  expect(dragRange([6.1, 8.7], [null, 4000], 2)!.to).toBeLessThan(12);
});

test('no step is finer than the decimals that mean something', () => {
  expect(dragRange([1450, 1460], [], 0)!.step).toBe(1);
  // A quantity of one's own may be tiny: then they say nothing.
  expect(dragRange([1e-6, 2e-6], [], 3)!.step).toBe(5e-9);
});

test('without a value there is no range, and equal values have one', () => {
  expect(dragRange([null], [3], 1)).toBeNull();
  const { from, to } = dragRange([5, 5], [null], 1)!;
  expect(from).toBeLessThan(5);
  expect(to).toBeGreaterThan(5);
});
