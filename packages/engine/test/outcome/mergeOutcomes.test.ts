import type { Outcome } from '@tiegel/contract';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { addOutcome, cutOffOf, emptyOutcome, mergeOutcomes, type Ranking } from '../../src/index.ts';
import { mergeBestOfSystems, mostSystemsKept } from '../../src/outcome/bestOfSystems.ts';
import { bestPoints } from '../../src/outcome/bestPoints.ts';
import { keptPoints } from '../../src/outcome/keptPoints.ts';

interface Point {
  score: number;
  system: number;
  point: number;
}

const rankings: fc.Arbitrary<Ranking> = fc.record({
  prefer: fc.constantFrom('high' as const, 'low' as const),
  keep: fc.nat({ max: 8 }),
  keepPerSystem: fc.nat({ max: 3 }),
});

/** Different points, dealt out to three parts of a search. */
const threeParts = fc
  .array(
    fc.record({
      score: fc.oneof(fc.integer({ min: 0, max: 3 }), fc.constant(Number.NaN)),
      system: fc.nat({ max: 5 }),
      part: fc.nat({ max: 2 }),
    }),
    { maxLength: 40, size: 'max' },
  )
  .map((list) =>
    [0, 1, 2].map((part) => list.flatMap((one, point) => (one.part === part ? [{ ...one, point }] : []))),
  );

/** What scoring these points would have found. */
function outcomeOf(points: readonly Point[], ranking: Ranking): Outcome {
  const kept = keptPoints(ranking, null);
  for (const { system, score, point } of points.toSorted((one, other) => one.system - other.system)) {
    kept.enter(system);
    kept.offer(score, point);
  }
  const passed = points.length;
  const outside: Record<string, number> = passed % 2 === 1 ? { omega: passed } : {};
  return { points: 2 * passed, passed, passedEach: [passed, passed + 1], outside, ...kept.finish() };
}

test('merging is commutative, associative, and adds nothing to an empty outcome', () => {
  fc.assert(
    fc.property(threeParts, rankings, (parts, ranking) => {
      const [one, two, three] = parts.map((part) => outcomeOf(part, ranking)) as [Outcome, Outcome, Outcome];
      const merge = (left: Outcome, right: Outcome) => mergeOutcomes(left, right, ranking);
      expect(merge(one, two)).toStrictEqual(merge(two, one));
      expect(merge(merge(one, two), three)).toStrictEqual(merge(one, merge(two, three)));
      expect(merge(one, emptyOutcome(2))).toStrictEqual(one);
    }),
    { numRuns: 500 },
  );
});

test('adding to an outcome gives what merging gives, whatever its list lies in', () => {
  fc.assert(
    fc.property(threeParts, rankings, fc.boolean(), (parts, ranking, within) => {
      const [one, two, three] = parts.map((part) => outcomeOf(part, ranking)) as [Outcome, Outcome, Outcome];
      const expected = mergeOutcomes(mergeOutcomes(one, two, ranking), three, ranking);
      const { best } = one;
      const first = within ? { ...one, best: Float64Array.of(0, ...best).subarray(1) } : one;
      expect(addOutcome(addOutcome(first, two, ranking), three, ranking)).toStrictEqual(expected);
    }),
    { numRuns: 500 },
  );
});

test('what is merged is what scoring all points at once keeps', () => {
  fc.assert(
    fc.property(threeParts, rankings, (parts, ranking) => {
      const merged = parts
        .map((part) => outcomeOf(part, ranking))
        .reduce((sum, one) => mergeOutcomes(sum, one, ranking));
      const { best, bestOfSystems } = outcomeOf(parts.flat(), ranking);
      expect({ best: merged.best, bestOfSystems: merged.bestOfSystems }).toStrictEqual({
        best,
        bestOfSystems,
      });
    }),
    { numRuns: 500 },
  );
});

test('of more than 100,000 systems the best are kept, whatever is merged first', () => {
  const ranking: Ranking = { prefer: 'high', keep: 0, keepPerSystem: 2 };
  const systems = (first: number, many: number) => {
    const kept = keptPoints(ranking, null);
    for (let system = first; system < first + many; system++) {
      kept.enter(system);
      // A score that goes up and down over the systems, and a second point a little worse.
      kept.offer((system * 7919) % 100_003, 1);
      kept.offer(((system * 7919) % 100_003) - 0.5, 0);
    }
    return kept.finish().bestOfSystems;
  };
  const [one, two, three] = [systems(0, 90_000), systems(90_000, 70_000), systems(160_000, 60_000)];
  const merge = (left: Float64Array, right: Float64Array) => mergeBestOfSystems(left, right, ranking);
  const merged = merge(merge(one, two), three);
  expect(merged).toHaveLength(mostSystemsKept * 2 * 3);
  // By bytes: comparing so many numbers one by one takes seconds.
  expect(Buffer.compare(bytesOf(merge(three, merge(two, one))), bytesOf(merged))).toBe(0);
  expect(Buffer.compare(bytesOf(systems(0, 220_000)), bytesOf(merged))).toBe(0);
});

test('the cut-off is the last score kept, once as many are kept as were asked for', () => {
  const ranking: Ranking = { prefer: 'low', keep: 2, keepPerSystem: 0 };
  const found = (...scores: number[]) => {
    const best = bestPoints(2, 'low');
    scores.forEach((score, point) => {
      best.offer(score, 0, point);
    });
    return { ...emptyOutcome(0), best: best.take() };
  };
  expect(cutOffOf(found(3), ranking)).toBeNull();
  expect(cutOffOf(found(3, 1, 2), ranking)).toBe(2);
  expect(cutOffOf(found(3, Number.NaN), ranking)).toBeNull();
  expect(cutOffOf(found(3, 1), { ...ranking, keep: 0 })).toBeNull();
});

function bytesOf(numbers: Float64Array): Buffer {
  return Buffer.from(numbers.buffer, numbers.byteOffset, numbers.byteLength);
}
