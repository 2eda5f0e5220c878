import { encodeOutcome, type Outcome, type Plan, type Tally } from '@tiegel/contract';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { scoreBlocks } from '../../src/blocks/scoreBlocks.ts';
import {
  countPoints,
  mergeOutcomes,
  planChunks,
  prepare,
  scoreChunk,
  scoreReference,
} from '../../src/index.ts';
import { scorePruned } from '../../src/pruning/scorePruned.ts';
import { wholeChunk } from '../fixtures/chunks.ts';
import { planOf, smallPlans } from '../fixtures/plans.ts';
import { specificationWith } from '../fixtures/specifications.ts';

const withTally = (plan: Plan, tally: Tally): Plan => ({
  ...plan,
  specification: { ...plan.specification, tally },
});

const same = (one: Outcome, other: Outcome) => {
  expect(one).toEqual(other);
  expect(Buffer.compare(encodeOutcome(one), encodeOutcome(other))).toBe(0);
};

test('leaving regions out changes nothing of the outcome, whatever is counted', () => {
  fc.assert(
    fc.property(
      smallPlans,
      fc.constantFrom<Tally>('all', 'none'),
      fc.constantFrom(1, 3, 20, 500),
      (plan, tally, mostToSweep) => {
        const prepared = prepare(withTally(plan, tally));
        const chunk = wholeChunk(prepared);
        if (prepared.systems.count === 0) return;
        const found = scorePruned(prepared, chunk, { cutOff: null }, mostToSweep)!;
        same(found, scoreReference(prepared, chunk, { cutOff: null })!);
      },
    ),
    { numRuns: 400 },
  );
}, 120_000);

test('chunks that cut systems merge to the same, with the cut-off known so far', () => {
  fc.assert(
    fc.property(
      smallPlans,
      fc.constantFrom<Tally>('all', 'none'),
      fc.integer({ min: 1, max: 60 }),
      (plan, tally, size) => {
        const prepared = prepare(withTally(plan, tally));
        const whole = wholeChunk(prepared);
        if (prepared.systems.count === 0) return;
        const truth = scoreReference(prepared, whole, { cutOff: null })!;
        const chunks = planChunks(prepared.grid, { pointsPerChunk: size, workers: 2 });
        // Bounds of its own can leave a system without a single grid point.
        if (chunks.length === 0) {
          expect(truth.points).toBe(0);
          return;
        }
        const last = truth.best.at(-3) ?? Number.NaN;
        const full = truth.best.length === 3 * prepared.ranking.keep && !Number.isNaN(last);
        const cutOff = full ? last : null;
        const found = chunks
          .map((chunk) => scorePruned(prepared, chunk, { cutOff }, 4)!)
          .reduce((one, other) => mergeOutcomes(one, other, prepared.ranking));
        same(found, truth);
      },
    ),
    { numRuns: 150 },
  );
}, 120_000);

test('passes of all limits together are the same whether regions are left out or every point is looked at', () => {
  const specification = specificationWith({
    elements: { pool: ['Al', 'Co', 'Cr', 'Fe', 'Mn', 'Ni', 'Ti'], require: [], forbid: [] },
    components: { min: 5, max: 5 },
    fractions: { step: 2, min: 4, max: 60, each: {} },
    limits: [
      { quantity: 'mixingEnthalpy', min: -20, max: 0 },
      { quantity: 'sizeMismatch', max: 6 },
    ],
    keep: 50,
    tally: 'all',
  });
  const prepared = prepare(planOf(specification));
  const points = Number(countPoints(prepared.grid));
  const chunk = { ...wholeChunk(prepared), points };
  const found = scoreChunk(prepared, chunk, { cutOff: null })!;
  same(found, scoreBlocks(prepared, chunk, { cutOff: null })!);
  same(found, scorePruned(prepared, chunk, { cutOff: null })!);
  expect(found.points).toBe(points);
  expect(found.passed).toBeGreaterThan(1000);
}, 60_000);

test('chunks that share how good a point must be merge to the same', () => {
  const specification = specificationWith({
    elements: { pool: ['Al', 'Co', 'Cr', 'Fe', 'Mn', 'Ni', 'Ti'], require: [], forbid: [] },
    components: { min: 4, max: 4 },
    fractions: { step: 2, min: 4, max: 60, each: {} },
    limits: [{ quantity: 'mixingEnthalpy', min: -20, max: 0 }],
    keep: 30,
    tally: 'none',
  });
  const prepared = prepare(planOf(specification));
  const truth = scoreBlocks(prepared, wholeChunk(prepared), { cutOff: null })!;
  const chunks = planChunks(prepared.grid, { pointsPerChunk: 20_000, workers: 2 });
  for (const order of [chunks, chunks.toReversed()]) {
    const sharedKey = Float64Array.of(Number.POSITIVE_INFINITY);
    const found = order
      .map((chunk) => scorePruned(prepared, chunk, { cutOff: null, sharedKey })!)
      .reduce((one, other) => mergeOutcomes(one, other, prepared.ranking));
    same(found, truth);
    // The worst score that is kept, which is its own key: low is best.
    expect(sharedKey[0]).toBeGreaterThanOrEqual(truth.best.at(-3)!);
    expect(sharedKey[0]).toBeLessThan(Number.POSITIVE_INFINITY);
  }
}, 60_000);

test('a pruned chunk is left when it is asked to stop, and tells how far it is', () => {
  const prepared = prepare(planOf(specificationWith({ tally: 'none', keep: 1 })));
  const shares: number[] = [];
  const progress = (share: number) => shares.push(share);
  expect(scorePruned(prepared, wholeChunk(prepared), { cutOff: null, stopped: () => true })).toBeNull();
  expect(scorePruned(prepared, wholeChunk(prepared), { cutOff: null, progress })).not.toBeNull();
  expect(shares[0]).toBe(0);
  expect(shares).toEqual(shares.toSorted((one, other) => one - other));
});
