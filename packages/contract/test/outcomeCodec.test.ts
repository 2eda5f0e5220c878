import fc from 'fast-check';
import { expect, test } from 'vitest';
import { decodeOutcome, encodeOutcome, type Outcome } from '../src/index.ts';

const numbers = fc.array(fc.double(), { maxLength: 60 }).map((list) => Float64Array.from(list));
const count = fc.nat({ max: Number.MAX_SAFE_INTEGER });
const outcomes: fc.Arbitrary<Outcome> = fc.record({
  points: count,
  passed: count,
  passedEach: fc.array(count, { maxLength: 8 }),
  outside: fc.dictionary(fc.string(), count, { maxKeys: 4 }),
  best: numbers,
  bestOfSystems: numbers,
});

test('an outcome comes back from its bytes equal to the last bit, NaN and infinities included', () => {
  fc.assert(
    fc.property(outcomes, (outcome) => {
      expect(decodeOutcome(encodeOutcome(outcome))).toEqual(outcome);
    }),
  );
});

test('bytes are read from any place of a larger buffer, as they come from a socket', () => {
  fc.assert(
    fc.property(outcomes, fc.nat({ max: 9 }), (outcome, before) => {
      const bytes = encodeOutcome(outcome);
      const larger = Buffer.alloc(before + bytes.length + 5, 0xff);
      larger.set(bytes, before);
      expect(decodeOutcome(larger.subarray(before, before + bytes.length))).toEqual(outcome);
    }),
  );
});

test('bytes that were cut short are refused at every length', () => {
  const outcome = {
    points: 3,
    passed: 1,
    passedEach: [1],
    outside: {},
    best: Float64Array.of(1, 2, 3),
    bestOfSystems: new Float64Array(0),
  };
  const bytes = encodeOutcome(outcome);
  for (let length = 0; length < bytes.length; length++) {
    expect(() => decodeOutcome(bytes.subarray(0, length))).toThrow();
  }
});
