import fc from 'fast-check';
import { expect, test } from 'vitest';
import { entropyTerm } from '../../src/index.ts';

test('c ln c: 0 at both ends, −½ ln 2 in the middle', () => {
  expect(entropyTerm(0)).toBe(0);
  expect(entropyTerm(1)).toBe(0);
  expect(Math.abs(entropyTerm(0.5) + Math.LN2 / 2)).toBeLessThanOrEqual(2 ** -50);
});

test('terms are whole multiples of 2⁻⁵⁰ within one of c ln c', () => {
  fc.assert(
    fc.property(fc.double({ min: 1e-6, max: 1, noNaN: true }), (share) => {
      const term = entropyTerm(share);
      expect(Number.isInteger(term * 2 ** 50)).toBe(true);
      expect(Math.abs(term - share * Math.log(share))).toBeLessThanOrEqual(2 ** -50);
    }),
  );
});

test('a sum of terms does not depend on their order, digit for digit', () => {
  const parts = fc.array(fc.integer({ min: 1, max: 300 }), { minLength: 2, maxLength: 10 });
  fc.assert(
    fc.property(
      parts.chain((list) =>
        fc.tuple(fc.constant(list), fc.shuffledSubarray(list, { minLength: list.length })),
      ),
      ([list, shuffled]) => {
        const whole = list.reduce((sum, part) => sum + part);
        const entropy = (order: number[]) => order.reduce((sum, part) => sum - entropyTerm(part / whole), 0);
        expect(entropy(shuffled)).toBe(entropy(list));
      },
    ),
  );
});
