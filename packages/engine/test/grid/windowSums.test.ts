import fc from 'fast-check';
import { expect, test } from 'vitest';
import { windowSums } from '../../src/grid/windowSums.ts';

const cases = fc.record({
  values: fc
    .array(fc.nat({ max: 1000 }), { minLength: 1, maxLength: 30, size: 'max' })
    .map((list) => Float64Array.from(list)),
  lowest: fc.integer({ min: 1, max: 32 }),
  highest: fc.integer({ min: 0, max: 32 }),
});

test('each sum is that of its window', () => {
  fc.assert(
    fc.property(cases, ({ values, lowest, highest }) => {
      const expected = Array.from(values, (_, at) =>
        values.reduce(
          (sum, value, from) => (at - from >= lowest && at - from <= highest ? sum + value : sum),
          0,
        ),
      );
      expect(Array.from(windowSums(values, lowest, highest))).toEqual(expected);
    }),
  );
});

test('with a modulus each sum is its residue', () => {
  fc.assert(
    fc.property(cases, ({ values, lowest, highest }) => {
      const residues = values.map((value) => value % 1001);
      const plain = windowSums(residues, lowest, highest);
      expect(windowSums(residues, lowest, highest, 1001)).toEqual(plain.map((sum) => sum % 1001));
    }),
  );
});

test('numbers that are too large to be exact leave small sums beside them exact', () => {
  const values = Float64Array.of(2 ** 70, 3, 1, 1, 1);
  expect(windowSums(values, 1, 2)[4]).toBe(2);
});
