import { factsFor, parseAlloy, symbols } from '@tiegel/elements';
import { expect, test } from 'vitest';
import { formulaValue, phaseClassProbabilities, valueFor } from '../../src/index.ts';

const probability = (alloy: string, of: keyof typeof phaseClassProbabilities) =>
  formulaValue(phaseClassProbabilities[of], parseAlloy(alloy), factsFor(symbols))!;

// Reported single phases: CoCrFeNi fcc, NbMoTaW and HfNbTaTiZr bcc (Senkov et al. 2010, 2011); from memory.
test('alloys known for one solution get it more often than not, and of the reported kind', () => {
  for (const alloy of ['NbMoTaW', 'HfNbTaTiZr']) {
    expect(valueFor('singlePhaseEstimate', alloy)).toBeGreaterThan(0.5);
    expect(probability(alloy, 'bcc')).toBeGreaterThan(probability(alloy, 'fcc'));
  }
  expect(probability('CoCrFeNi', 'fcc')).toBeGreaterThan(probability('CoCrFeNi', 'bcc'));
});

// Reported with many intermetallics at once (published data of this project: AlLiMgSnZn, 'other').
test('an alloy of elements that bind strongly gets it seldom', () => {
  expect(valueFor('singlePhaseEstimate', 'AlLiMgSnZn')).toBeLessThan(0.2);
});

test('the four classes sum to 1, and fcc and bcc to the estimate', () => {
  for (const alloy of ['CoCrFeMnNi', 'AlCoCrFeNi', 'HfNbTaTiZr', 'AlLiMgSnZn', 'CuFe']) {
    const [fcc, bcc, both, other] = (['fcc', 'bcc', 'both', 'other'] as const).map((of) =>
      probability(alloy, of),
    );
    expect(fcc! + bcc! + both! + other!).toBeCloseTo(1, 12);
    expect(fcc! + bcc!).toBeCloseTo(valueFor('singlePhaseEstimate', alloy)!, 12);
  }
});

test('order and measure of writing do not matter', () => {
  expect(valueFor('singlePhaseEstimate', 'NiMnFeCrCo')).toBe(valueFor('singlePhaseEstimate', 'CoCrFeMnNi'));
});

test('an element without a pair enthalpy gives null', () => {
  const facts = factsFor(['Cr', 'Ni']);
  facts.pairs.mixingEnthalpy = [
    [0, null],
    [null, 0],
  ];
  expect(valueFor('singlePhaseEstimate', 'CrNi', facts)).toBeNull();
});
