import fc from 'fast-check';
import { expect, test } from 'vitest';
import { reversedPlaces } from '../../src/candidates/reversedPlaces.ts';
import { sortedPlaces } from '../../src/candidates/sortedPlaces.ts';

const value = fc.oneof(
  fc.double(),
  fc.constantFrom(0, -0, Number.NaN, 5e-324, -5e-324, 1.7976931348623157e308, -1e-300),
  fc.integer({ min: -3, max: 3 }),
);

function sorted(values: number[], direction: 'asc' | 'desc'): number[] {
  const steps = sortedPlaces(Float64Array.from(values), direction);
  for (;;) {
    const { done, value: order } = steps.next();
    if (done) return [...order];
  }
}

test('places stand in the order of their values, equal ones by place, missing ones last', () => {
  fc.assert(
    fc.property(
      fc.array(value, { maxLength: 60, size: 'max' }),
      fc.constantFrom('asc' as const, 'desc' as const),
      (values, direction) => {
        const sign = direction === 'asc' ? 1 : -1;
        const expected = values
          .map((_, place) => place)
          .sort((a, b) => {
            const [left, right] = [values[a]!, values[b]!];
            const missing = Number(Number.isNaN(left)) - Number(Number.isNaN(right));
            if (missing !== 0 || Number.isNaN(left)) return missing || a - b;
            if (left === right) return a - b;
            return left < right ? -sign : sign;
          });
        expect(sorted(values, direction)).toEqual(expected);
      },
    ),
    { numRuns: 2000 },
  );
});

test('an order turned round is that of sorting the other way, both ways', () => {
  const finished = (steps: Generator<number, Uint32Array>) => {
    for (;;) {
      const { done, value: order } = steps.next();
      if (done) return [...order];
    }
  };
  fc.assert(
    fc.property(
      fc.array(value, { maxLength: 60, size: 'max' }),
      fc.constantFrom(['asc', 'desc'] as const, ['desc', 'asc'] as const),
      (values, [from, to]) => {
        const column = Float64Array.from(values);
        const turned = finished(reversedPlaces(Uint32Array.from(sorted(values, from)), column));
        expect(turned).toEqual(sorted(values, to));
      },
    ),
    { numRuns: 2000 },
  );
  // More than one step, with long runs of equal values.
  const column = Float64Array.from({ length: 600_000 }, (_, at) => (at % 7 === 0 ? Number.NaN : at % 5));
  const rising = Uint32Array.from(sorted([...column], 'asc'));
  expect(finished(reversedPlaces(rising, column))).toEqual(sorted([...column], 'desc'));
});
