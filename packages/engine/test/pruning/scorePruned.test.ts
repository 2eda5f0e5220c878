import { encodeOutcome, type Outcome, type Plan, type Tally } from '@tiegel/contract';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { mergeOutcomes, planChunks, prepare, scoreReference } from '../../src/index.ts';
import { scorePruned } from '../../src/pruning/scorePruned.ts';
import { wholeChunk } from '../fixtures/chunks.ts';
import { smallPlans } from '../fixtures/plans.ts';

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
