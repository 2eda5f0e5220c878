import { encodeOutcome } from '@tiegel/contract';
import { symbols } from '@tiegel/elements';
import { expect, test } from 'vitest';
import { scoreBlocks } from '../../src/blocks/scoreBlocks.ts';
import { countPoints, planChunks, prepare } from '../../src/index.ts';
import { scoreKernel } from '../../src/kernel/scoreKernel.ts';
import { scoreAll } from '../../src/pruning/scoreAll.ts';
import { scorePruned } from '../../src/pruning/scorePruned.ts';
import { planOf } from '../fixtures/plans.ts';
import { specificationWith } from '../fixtures/specifications.ts';

const pool = ['Al', 'Co', 'Cr', 'Cu', 'Fe', 'Mn', 'Mo', 'Ni', 'Ti', 'V'];

/** 252 systems of 44,726 points; the size mismatch leaves few of them, cuts through them, or leaves all. */
const prepared = (max: number) =>
  prepare(
    planOf(
      specificationWith({
        elements: { pool, require: [], forbid: [] },
        components: { min: 5, max: 5 },
        fractions: { step: 2.5, min: 5, max: 60, each: {} },
        limits: [
          { quantity: 'sizeMismatch', max },
          { quantity: 'mixingEnthalpy', min: -15, max: 5 },
        ],
        keep: 50,
        tally: 'all',
      }),
    ),
  );

test.each([0.5, 5, 50])('whichever way turns out quicker, large chunks have the same outcome (%f)', (max) => {
  const search = prepared(max);
  const chunks = planChunks(search.grid, { pointsPerChunk: 2_200_000, workers: 1 });
  const large = chunks.filter(({ points }) => points >= 2_000_000);
  expect(Number(countPoints(search.grid))).toBe(252 * 44_726);
  expect(large.length).toBeGreaterThan(0);
  // Twice: what the first turn decides is gone by in the second.
  for (const chunk of [...large, ...large]) {
    const found = encodeOutcome(scoreAll(search, chunk, { cutOff: null })!);
    for (const score of [scorePruned, scoreKernel]) {
      expect(Buffer.compare(found, encodeOutcome(score(search, chunk, { cutOff: null })!))).toBe(0);
    }
  }
});

test('ends without an outcome when it is stopped, while it is tried and later', () => {
  const search = prepared(5);
  const [chunk] = planChunks(search.grid, { pointsPerChunk: 1e9, workers: 1 });
  expect(chunk!.points).toBe(Number(countPoints(search.grid)));
  expect(scoreAll(search, chunk!, { cutOff: null, stopped: () => true })).toBeNull();
  expect(scoreAll(search, chunk!, { cutOff: null })).not.toBeNull();
  expect(scoreAll(search, chunk!, { cutOff: null, stopped: () => true })).toBeNull();
});

test('takes chunks whose systems have numbers above 2^31, whichever way', () => {
  const many = prepare(
    planOf(
      specificationWith({
        elements: { pool: [...symbols], require: [], forbid: [] },
        components: { min: 9, max: 9 },
        fractions: { step: 5, min: 5, max: 100, each: {} },
        limits: [{ quantity: 'density', max: 9 }],
        rank: [{ quantity: 'density', prefer: 'low' }],
        tally: 'all',
      }),
    ),
  );
  const firstSystem = 2 ** 31 + 7;
  expect(many.systems.count).toBeGreaterThan(firstSystem + 30);
  const chunk = {
    ...{ ordinal: 0, firstSystem, endSystem: firstSystem + 30, firstPoint: 0, endPoint: null },
    points: 30 * 75_582,
  };
  const found = scoreAll(many, chunk, { cutOff: null })!;
  expect(found.best[1]).toBeGreaterThanOrEqual(firstSystem);
  for (const score of [scorePruned, scoreKernel, scoreBlocks]) {
    expect(Buffer.compare(encodeOutcome(found), encodeOutcome(score(many, chunk, { cutOff: null })!))).toBe(
      0,
    );
  }
});
