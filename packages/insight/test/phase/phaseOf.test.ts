import { parseAlloy, symbols } from '@tiegel/elements';
import { publishedAlloys } from '@tiegel/elements/publishedAlloys';
import { valuesOf } from '@tiegel/screening';
import { expect, test } from 'vitest';
import { phaseOf } from '../../src/index.ts';
import { facts, turned } from '../fixtures/alloys.ts';

const near = publishedAlloys.filter(({ phaseClass }) => phaseClass !== null);

test('the classes add up to 1, and fcc and bcc to the quantity that searches rank by', () => {
  for (const { composition } of near.slice(0, 60)) {
    const { fcc, bcc, both, other, singleSolution } = phaseOf(composition, facts);
    expect(fcc! + bcc! + both! + other!).toBeCloseTo(1, 9);
    expect(singleSolution).toBeCloseTo(
      valuesOf(composition, facts, ['singlePhaseEstimate']).singlePhaseEstimate!,
      9,
    );
  }
});

test('the same alloy written in another order or with another total has the same estimate', () => {
  const alloy = { Al: 10, Co: 20, Cr: 30, Fe: 15, Ni: 25 };
  const { words, singleSolution } = phaseOf(alloy, facts);
  expect(phaseOf(turned(alloy), facts)).toEqual(phaseOf(alloy, facts));
  const doubled = Object.fromEntries(Object.entries(alloy).map(([symbol, amount]) => [symbol, 2 * amount]));
  expect(phaseOf(doubled, facts)).toMatchObject({ words });
  expect(phaseOf(doubled, facts).singleSolution).toBeCloseTo(singleSolution!, 9);
});

// Where the skill ends (0.22) is what the validation by distance found: science of this project.
test('far from every alloy of the training data there is no basis, and no number', () => {
  const far = phaseOf(parseAlloy('PtPd'), facts);
  expect(far).toMatchObject({
    singleSolution: null,
    fcc: null,
    bcc: null,
    both: null,
    other: null,
    basis: 'none',
  });
  expect(far.nearestDistance).toBeGreaterThan(0.22);
  expect(far.words).toMatch(/^No basis for an estimate/);
});

test('a known alloy lies at no distance; between known and far the basis is weak', () => {
  expect(phaseOf(near[0]!.composition, facts)).toMatchObject({ basis: 'ok' });
  expect(phaseOf(near[0]!.composition, facts).nearestDistance).toBeCloseTo(0, 12);
  const others = symbols.filter((symbol) => !['Co', 'Cr', 'Fe', 'Mn', 'Ni'].includes(symbol));
  const weak = others
    .map((symbol) => phaseOf({ Co: 16, Cr: 16, Fe: 16, Mn: 16, Ni: 16, [symbol]: 20 }, facts))
    .filter(({ nearestDistance }) => nearestDistance > 0.16 && nearestDistance < 0.21);
  expect(weak.length).toBeGreaterThan(0);
  for (const one of weak) {
    expect(one.basis).toBe('weak');
    expect(one.words).toContain('The basis is weak');
  }
});
