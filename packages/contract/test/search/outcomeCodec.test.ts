import fc from 'fast-check';
import { expect, test } from 'vitest';
import { decodeOutcome, encodeOutcome, type Outcome } from '../../src/index.ts';

const numbers = fc
  .array(fc.tuple(fc.double(), fc.double(), fc.double()), { maxLength: 20, size: 'max' })
  .map((points) => Float64Array.from(points.flat()));
const count = fc.nat({ max: Number.MAX_SAFE_INTEGER });
const outcomes: fc.Arbitrary<Outcome> = fc
  .record({
    points: count,
    passed: count,
    passedEach: fc.array(count, { maxLength: 8 }),
    // Ids of quantities are words; JSON could also carry __proto__, which a record drops.
    outside: fc.dictionary(fc.stringMatching(/^[a-z][A-Za-z]{0,30}$/), count, { maxKeys: 4 }),
    best: numbers,
    bestOfSystems: numbers,
  })
  .chain((outcome) =>
    fc
      .option(fc.record({ members: numbers, cut: fc.option(fc.constant(Float64Array.of(1, -0, 2.5))) }))
      .map((front) => (front === null ? outcome : { ...outcome, front })),
  );

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
    expect(() => decodeOutcome(bytes.subarray(0, length))).toThrow('cannot be read');
  }
});

test.each([
  ['of another version of the format', { version: 2 }],
  ['with a negative count', { passed: -1 }],
  ['with half a point', { lengths: [1, 0] }],
  ['with a key that no outcome has', { extra: 1 }],
])('bytes %s are refused, however well they are formed', (_, change) => {
  const sound = { version: 1, points: 3, passed: 1, passedEach: [], outside: {}, lengths: [0, 0] };
  expect(decodeOutcome(bytesOf(sound))).toMatchObject({ points: 3 });
  expect(() => decodeOutcome(bytesOf({ ...sound, ...change }))).toThrow(
    expect.objectContaining({ faults: [expect.objectContaining({ code: 'outcome/unreadable' })] }),
  );
});

test.each([8, 1])('bytes with %i more than the head says are refused', (more) => {
  const sound = { version: 1, points: 3, passed: 1, passedEach: [], outside: {}, lengths: [3, 0] };
  const bytes = Buffer.concat([bytesOf(sound), Buffer.alloc(more)]);
  expect(() => decodeOutcome(bytes)).toThrow(
    expect.objectContaining({ faults: [expect.objectContaining({ code: 'outcome/unreadable' })] }),
  );
});

/** Bytes with a head and one number for each that it announces. */
function bytesOf(head: { lengths: number[] }): Uint8Array {
  const text = Buffer.from(JSON.stringify(head));
  const start = Math.ceil((4 + text.length) / 8) * 8;
  const bytes = Buffer.alloc(start + 8 * (head.lengths[0]! + head.lengths[1]!), ' ');
  bytes.writeUInt32LE(text.length, 0);
  bytes.set(text, 4);
  return bytes;
}
