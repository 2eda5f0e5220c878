import { expect, test } from 'vitest';
import { trainedPhaseReport } from '../../src/data/phaseReport.ts';
import { conformalThreshold } from '../../src/phase/conformalCoverage.ts';
import { trainingAlloys } from '../../src/phase/trainingAlloys.ts';
import { type PhaseScores, validatePhaseModel } from '../../src/phase/validatePhaseModel.ts';

const alloys = trainingAlloys();
const draws = validatePhaseModel(alloys, [0]);

/** What the estimate must reach on systems that it has not seen. */
function expectSkill(scores: PhaseScores) {
  expect(scores.auc).toBeGreaterThanOrEqual(0.76);
  // More than this would be a leak between the folds rather than skill.
  expect(scores.auc).toBeLessThan(0.82);
  expect(scores.logLoss).toBeLessThanOrEqual(0.56);
  expect(scores.brierSkill).toBeGreaterThanOrEqual(0.2);
  expect(scores.fourClassAccuracy).toBeGreaterThanOrEqual(0.55);
  expect(scores.fccAgainstBcc).toBeGreaterThanOrEqual(0.9);
  expect(scores.conformalCoverage).toBeGreaterThanOrEqual(0.72);
  expect(scores.conformalCoverage).toBeLessThanOrEqual(0.88);
}

test('the report is of 20 draws on 310 alloys of 108 systems, and shows skill', () => {
  expect(trainedPhaseReport).toMatchObject({ alloys: 310, systems: 108, draws: 20 });
  expectSkill(trainedPhaseReport.scores);
});

test('a draw computed now shows skill too, and is the first of the report', () => {
  expectSkill(draws[0]!.scores);
  for (const [name, score] of Object.entries(draws[0]!.scores)) {
    const reported = trainedPhaseReport.firstDraw[name as keyof PhaseScores];
    expect(Math.abs(score / reported - 1), name).toBeLessThan(1e-5);
  }
});

test('every alloy gets one probability for each class from models that did not know its system', () => {
  expect(draws[0]!.probabilities).toHaveLength(alloys.length);
  for (const p of draws[0]!.probabilities) expect(p.reduce((a, b) => a + b)).toBeCloseTo(1, 12);
});

test('the threshold of likely classes is that of such draws', () => {
  const said = alloys.map(({ phaseClass }, at) => draws[0]!.probabilities[at]![phaseClass]!);
  expect(Math.abs(conformalThreshold(said) - trainedPhaseReport.likelyFrom)).toBeLessThan(0.05);
});

test('the intervals hold the scores, and the best published rule lies below that of the balanced accuracy', () => {
  const { scores, intervals } = trainedPhaseReport;
  for (const name of ['auc', 'brierSkill', 'balancedAccuracy'] as const) {
    const [low, high] = intervals[name];
    expect(scores[name]).toBeGreaterThan(low);
    expect(scores[name]).toBeLessThan(high);
  }
});

test('beyond a distance of 0.22 there are few alloys, which is why there is no basis there, and nearer there is skill at every distance', () => {
  const [last] = trainedPhaseReport.byDistance.slice(-1);
  expect(last).toMatchObject({ from: 0.22, to: 1 });
  expect(last!.alloys).toBeLessThan(50);
  for (const { brierSkill } of trainedPhaseReport.byDistance.slice(0, -1))
    expect(brierSkill).toBeGreaterThan(0.15);
});
