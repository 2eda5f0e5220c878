import { formulaValue, phaseClassProbabilities } from '@tiegel/screening';
import { expect, test } from 'vitest';
import { fitPhaseModel, phaseProbabilities } from '../../src/phase/fitPhaseModel.ts';
import { phaseModelOf } from '../../src/phase/phaseModelOf.ts';
import { reportedEvidence } from '../../src/phase/reportedEvidence.ts';
import { phaseClasses, trainingAlloys } from '../../src/phase/trainingAlloys.ts';
import { facts } from '../fixtures/alloys.ts';

const alloys = trainingAlloys();
const fitted = fitPhaseModel(alloys);

// The formula is made from the data file; that it equals a fresh fit says that the file is not stale.
test('the formula of the search equals a fresh fit on every training alloy', () => {
  for (const { alloy, features } of alloys) {
    const expected = phaseProbabilities(features, fitted);
    phaseClasses.forEach((name, k) => {
      const said = formulaValue(phaseClassProbabilities[name], alloy.composition, facts)!;
      expect(Math.abs(said - expected[k]!)).toBeLessThan(1e-9);
    });
  }
});

test('coefficients are in the units of the features, one for each', () => {
  const model = phaseModelOf(fitted);
  const width = model.features.length;
  expect(model.weights.map((row) => row.length)).toEqual([width, width, width, width]);
  expect(model.offset).toHaveLength(4);
});

test('fitting does not depend on the order of the alloys', () => {
  const other = fitPhaseModel(alloys.toReversed());
  for (const { features } of alloys.slice(0, 40)) {
    const [one, turned] = [fitted, other].map((model) => phaseProbabilities(features, model));
    for (const k of phaseClasses.keys()) expect(Math.abs(one![k]! - turned![k]!)).toBeLessThan(1e-8);
  }
});

test('evidence weighs by the root of the publications, and follows their shares', () => {
  const evidence = reportedEvidence(alloys);
  const at = alloys.findIndex(({ alloy }) => alloy.formula === 'CoCrFeMnNi');
  // 17 publications say FCC, 2 say FCC+BCC, 1 says something else: √20 in all.
  expect(evidence[at]!.reduce((a, b) => a + b)).toBeCloseTo(Math.sqrt(20), 12);
  const [fcc, bcc, both, other] = evidence[at]!;
  expect(fcc! / both!).toBeGreaterThan(5);
  expect(both!).toBeGreaterThan(bcc!);
  expect(other!).toBeGreaterThan(bcc!);
  expect(bcc!).toBeGreaterThan(0);
});
