import { expect, test } from 'vitest';
import { rankCorrelation } from '../../src/records/rankCorrelation.ts';

// Ten people's IQ and hours of television, the usual worked example (from memory): ρ = −29/165.
test('a worked example has −29/165', () => {
  const one = [106, 100, 86, 101, 99, 103, 97, 113, 112, 110];
  const other = [7, 27, 2, 50, 28, 29, 20, 12, 6, 17];
  expect(rankCorrelation(one, other)).toBeCloseTo(-29 / 165, 12);
});

test('any rising function has 1, a falling one −1, ties share their rank', () => {
  const values = [3, 1, 4, 1.5, 9];
  expect(rankCorrelation(values, values.map(Math.exp))).toBeCloseTo(1, 12);
  expect(
    rankCorrelation(
      values,
      values.map((value) => -value),
    ),
  ).toBeCloseTo(-1, 12);
  // ranks 1, 2.5, 2.5, 4 against 1, 2, 3, 4: 4.5/√(4.5 · 5)
  expect(rankCorrelation([1, 2, 2, 3], [1, 2, 3, 4])).toBeCloseTo(4.5 / Math.sqrt(4.5 * 5), 12);
});
