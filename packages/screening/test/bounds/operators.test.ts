import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { emptyInterval, type Interval, setInterval } from '../../src/bounds/interval.ts';
import { binaryInterval, choiceInterval, powerInterval, unaryInterval } from '../../src/bounds/operators.ts';
import { binaryValue, holds, powerValue, unaryValue } from '../../src/formula/arithmetic.ts';
import type { BinaryKind, UnaryKind } from '../../src/index.ts';

const infinity = Number.POSITIVE_INFINITY;

const end = fc.oneof(
  fc.constantFrom(0, -0, 1, -1, infinity, -infinity, 1e-300, 0.5),
  fc.double({ min: -50, max: 50, noNaN: true }),
);

/** An interval and a value that it allows: NaN where it may be missing. */
const inhabited = fc
  .tuple(
    end,
    end,
    fc.double({ min: 0, max: 1, noNaN: true }),
    fc.constantFrom('never', 'never', 'sometimes', 'always'),
    fc.boolean(),
  )
  .map(([a, b, share, missing, atEnd]) => {
    const [low, high] = a <= b ? [a, b] : [b, a];
    const interval = emptyInterval();
    setInterval(interval, low, high, missing as Interval['missing']);
    const between = low + share * (high - low);
    const inside =
      Number.isFinite(between) && !atEnd ? Math.min(Math.max(between, low), high) : share < 0.5 ? low : high;
    const lacks = missing === 'always' || (missing === 'sometimes' && share > 0.7);
    return { interval, value: lacks ? Number.NaN : inside };
  });

function expectHeld(interval: Interval, value: number): void {
  if (Number.isNaN(value)) {
    expect(interval.missing).not.toBe('never');
    return;
  }
  expect(interval.missing).not.toBe('always');
  expect(value).toBeGreaterThanOrEqual(interval.low);
  expect(value).toBeLessThanOrEqual(interval.high);
}

const runs = { numRuns: 2000 };

describe('the interval of an operator holds every value, missing and infinite ones included', () => {
  test.for(Object.keys(binaryInterval) as BinaryKind[])('%s', (kind) => {
    fc.assert(
      fc.property(inhabited, inhabited, (left, right) => {
        const into = emptyInterval();
        binaryInterval[kind](left.interval, right.interval, into);
        expectHeld(into, binaryValue[kind](left.value, right.value));
      }),
      runs,
    );
  });

  test.for(Object.keys(unaryInterval) as UnaryKind[])('%s', (kind) => {
    fc.assert(
      fc.property(inhabited, (of) => {
        const into = emptyInterval();
        unaryInterval[kind](of.interval, into);
        expectHeld(into, unaryValue[kind](of.value));
      }),
      runs,
    );
  });

  test.for([-3, -2, -1, -0.5, 0, 1 / 3, 0.91, 1, 2, 3, 4.5])('power %d', (exponent) => {
    fc.assert(
      fc.property(inhabited, (of) => {
        const into = emptyInterval();
        powerInterval(of.interval, exponent, into);
        expectHeld(into, powerValue(of.value, exponent));
      }),
      runs,
    );
  });

  test.for(['<', '<='] as const)('a choice by %s', (operator) => {
    fc.assert(
      fc.property(inhabited, inhabited, inhabited, fc.option(inhabited), (left, right, then, otherwise) => {
        const into = emptyInterval();
        choiceInterval(
          left.interval,
          operator,
          right.interval,
          then.interval,
          otherwise?.interval ?? null,
          into,
        );
        const chosen = holds(left.value, operator, right.value);
        const other = otherwise?.value ?? Number.NaN;
        expectHeld(into, chosen === null ? Number.NaN : chosen ? then.value : other);
      }),
      runs,
    );
  });
});

describe('the interval of an operator is as tight as its kind allows', () => {
  const interval = (low: number, high: number): Interval => ({ low, high, missing: 'never' });
  const of = (compute: (into: Interval) => void): Interval => {
    const into = emptyInterval();
    compute(into);
    return into;
  };

  test('sums, products and quotients of ends', () => {
    expect(of((into) => binaryInterval.add(interval(1, 2), interval(-3, 4), into))).toEqual(interval(-2, 6));
    expect(of((into) => binaryInterval.multiply(interval(-1, 2), interval(-3, 4), into))).toEqual(
      interval(-6, 8),
    );
    expect(of((into) => binaryInterval.divide(interval(1, 2), interval(2, 4), into))).toEqual(
      interval(0.25, 1),
    );
  });

  test('a quotient whose divisor touches 0 from above is bounded from below', () => {
    expect(of((into) => binaryInterval.divide(interval(1, 2), interval(0, 4), into))).toEqual(
      interval(0.25, infinity),
    );
    expect(of((into) => binaryInterval.divide(interval(0, 2), interval(0, 4), into)).missing).toBe(
      'sometimes',
    );
    expect(of((into) => binaryInterval.divide(interval(0, 0), interval(0, 0), into)).missing).toBe('always');
  });

  test('a choice that surely falls one way is that side', () => {
    const [one, other] = [interval(5, 6), interval(7, 8)];
    expect(of((into) => choiceInterval(interval(0, 1), '<', interval(2, 3), one, other, into))).toEqual(one);
    expect(of((into) => choiceInterval(interval(3, 4), '<', interval(2, 3), one, other, into))).toEqual(
      other,
    );
    expect(of((into) => choiceInterval(interval(2, 4), '<=', interval(2, 3), one, other, into))).toEqual(
      interval(5, 8),
    );
    expect(of((into) => choiceInterval(interval(3, 4), '<', interval(2, 3), one, null, into)).missing).toBe(
      'always',
    );
    expect(of((into) => choiceInterval(interval(2, 4), '<', interval(3, 3), one, null, into))).toEqual({
      ...one,
      missing: 'sometimes',
    });
  });

  test('roots and logarithms of what is surely negative are always missing', () => {
    expect(of((into) => unaryInterval.squareRoot(interval(-2, -1), into)).missing).toBe('always');
    expect(of((into) => unaryInterval.logarithm(interval(-2, -1), into)).missing).toBe('always');
    expect(of((into) => powerInterval(interval(-2, -1), 0.5, into)).missing).toBe('always');
    expect(of((into) => unaryInterval.squareRoot(interval(-2, 4), into))).toEqual({
      low: 0,
      high: 2,
      missing: 'sometimes',
    });
  });
});
