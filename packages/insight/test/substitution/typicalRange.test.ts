import { factsFor, symbols } from '@tiegel/elements';
import { publishedAlloys } from '@tiegel/elements/publishedAlloys';
import { valuesOf } from '@tiegel/screening';
import { expect, test } from 'vitest';
import { typicalRange } from '../../src/index.ts';

test('half of the published alloys lie between the outer quartiles, a quarter above', () => {
  const { low, middle, high } = typicalRange(['sizeMismatch']).sizeMismatch!;
  const facts = factsFor(symbols);
  const values = publishedAlloys().map(({ composition }) => valuesOf(composition, facts, ['sizeMismatch']));
  const share = (fits: (value: number) => boolean) =>
    values.filter(({ sizeMismatch }) => fits(sizeMismatch!)).length / values.length;
  expect(share((value) => value >= low && value <= high)).toBeCloseTo(0.5, 1);
  expect(share((value) => value > high)).toBeCloseTo(0.25, 1);
  expect(share((value) => value < middle)).toBeCloseTo(0.5, 1);
});

test('what needs prices has none', () => {
  expect(typicalRange(['cost'])).toEqual({ cost: null });
});
