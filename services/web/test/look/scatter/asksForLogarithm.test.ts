import { expect, test } from 'vitest';
import { asksForLogarithm } from '../../../src/look/scatter/asksForLogarithm.ts';

test('a few huge values above many small ones ask for it', () => {
  expect(asksForLogarithm([1, 2, 3, 2, 1000])).toBe(true);
});

test.each([
  ['values of one size', [7.1, 7.9, 7.4]],
  ['values below or at 0', [0, 1, 1, 900]],
  ['no values', [null]],
])('%s do not', (_, values) => {
  expect(asksForLogarithm(values)).toBe(false);
});
