import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { criteria } from '@tiegel/screening';
import { expect, test } from 'vitest';
import { trainedPhaseReport } from '../../src/data/phaseReport.ts';
import { evidence, evidenceText } from '../../src/index.ts';

const found = evidence();

test('the phase estimate stands beside the base rate and the best published rule, and beats them', () => {
  const { phaseEstimate } = found;
  const rules = found.criteria.filter(({ predicts }) => predicts === 'one solution');
  const best = Math.max(...rules.map(({ balancedAccuracy }) => balancedAccuracy!));
  expect(phaseEstimate.bestRule!.balancedAccuracy).toBe(best);
  expect(phaseEstimate.balancedAccuracy).toBeGreaterThan(best);
  expect(phaseEstimate.logLoss).toBeLessThan(phaseEstimate.baseRateLogLoss);
  expect(phaseEstimate.brier).toBeLessThan(phaseEstimate.baseRateBrier);
  // 116 of 310 published alloys are one solution
  expect(phaseEstimate.baseRate).toBeCloseTo(116 / 310, 5);
  expect(phaseEstimate).toMatchObject({ n: 310, systems: 108, auc: trainedPhaseReport.scores.auc });
  expect(phaseEstimate.validation).toContain('Whole element systems left out');
});

test('Brier score, skill and base rate fit each other', () => {
  const { brier, brierSkill, baseRateBrier } = found.phaseEstimate;
  expect(1 - brier / baseRateBrier).toBeCloseTo(brierSkill, 4);
});

test('it survives JSON: no value is Infinity or NaN', () => {
  expect(JSON.parse(JSON.stringify(found))).toEqual(found);
});

test('the document for people names every criterion and is what the data files say', () => {
  const text = readFileSync(join(import.meta.dirname, '../../evidence.md'), 'utf8');
  expect(text).toBe(evidenceText(found));
  const cells = text.split('\n').map((line) => line.split('|').map((cell) => cell.trim()));
  for (const { name, claim } of criteria) {
    expect(cells.filter((row) => row[1] === name && row[2] === claim)).toHaveLength(1);
  }
  expect(text).toContain('not testable here');
});
