import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  type Answer,
  areaUnderCurve,
  areaUnderCurveOf,
  balancedAccuracyAt,
  baseRate,
  brierScore,
  brierSkill,
  calibrationError,
  logLoss,
  reliability,
} from '../../src/phase/scores.ts';
import { areaUnderCurve as byPairs } from '../fixtures/areaUnderCurve.ts';

const answers = fc
  .array(fc.record({ probability: fc.integer({ min: 0, max: 20 }).map((k) => k / 20), yes: fc.boolean() }), {
    minLength: 2,
  })
  .filter((all) => all.some(({ yes }) => yes) && all.some(({ yes }) => !yes));

test('the area under the curve is the share of pairs in the right order, ties half', () => {
  fc.assert(
    fc.property(answers, (all) => {
      // the pair count of the fixture takes low for positive
      const cases = all.map(({ probability, yes }) => ({ positive: yes, score: -probability }));
      expect(areaUnderCurve(all)).toBeCloseTo(byPairs(cases), 12);
    }),
  );
});

test('answers that are drawn again and again have the area of those drawn, whatever was drawn before', () => {
  const draws = fc.array(fc.array(fc.nat(), { minLength: 1 }), { minLength: 1, maxLength: 4 });
  fc.assert(
    fc.property(answers, draws, (all, drawn) => {
      const areaOf = areaUnderCurveOf(all);
      for (const rows of drawn.map((numbers) => numbers.map((number) => number % all.length))) {
        expect(areaOf(rows)).toBe(areaUnderCurve(rows.map((row) => all[row]!)));
      }
    }),
  );
});

const four: Answer[] = [
  { probability: 0.9, yes: true },
  { probability: 0.6, yes: false },
  { probability: 0.3, yes: true },
  { probability: 0.1, yes: false },
];

// Worked by hand: (0.01 + 0.36 + 0.49 + 0.01)/4 = 0.2175; always saying 0.5 has 0.25.
test('scores of four answers, by hand', () => {
  expect(baseRate(four)).toBe(0.5);
  expect(brierScore(four)).toBeCloseTo(0.2175, 12);
  expect(brierSkill(four)).toBeCloseTo(0.13, 12);
  expect(logLoss(four)).toBeCloseTo(-Math.log(0.9 * 0.4 * 0.3 * 0.9) / 4, 12);
  expect(areaUnderCurve(four)).toBe(0.75);
  expect(balancedAccuracyAt(four, 0.5)).toBe(0.5);
  expect(balancedAccuracyAt(four, 0.2)).toBe(0.75);
});

test('always saying the base rate has no skill', () => {
  fc.assert(
    fc.property(answers, (all) => {
      const rate = baseRate(all);
      expect(brierSkill(all.map(({ yes }) => ({ probability: rate, yes })))).toBeCloseTo(0, 12);
    }),
  );
});

test('a reliability diagram keeps every answer once and shows what happened', () => {
  fc.assert(
    fc.property(answers, (all) => {
      const bins = reliability(all);
      expect(bins.reduce((sum, { count }) => sum + count, 0)).toBe(all.length);
      for (const { from, to, count, said, happened } of bins) {
        if (count === 0) expect([said, happened]).toEqual([null, null]);
        else expect(said! >= from - 1e-12 && said! <= to + 1e-12).toBe(true);
      }
    }),
  );
  expect(reliability(four)[9]).toEqual({ from: 0.9, to: 1, count: 1, said: 0.9, happened: 1 });
});

test('who says 0.25 where one in four happens is calibrated; who says 0.45 there is off by 0.2', () => {
  const saying = (probability: number) => [true, false, false, false].map((yes) => ({ probability, yes }));
  expect(calibrationError(saying(0.25))).toBe(0);
  expect(calibrationError(saying(0.45))).toBeCloseTo(0.2, 12);
});
