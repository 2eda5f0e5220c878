import { atomicToWeightPercent, parseAlloy, symbols } from '@tiegel/elements';
import { publishedAlloys } from '@tiegel/elements/publishedAlloys';
import { valuesOf } from '@tiegel/screening';
import { expect, test } from 'vitest';
import { trainedPhaseReport } from '../../src/data/phaseReport.ts';
import { compositionDistance, phaseOf, phaseTrust } from '../../src/index.ts';
import { facts, turned, withValues } from '../fixtures/alloys.ts';

const near = publishedAlloys().filter(({ phaseClass }) => phaseClass !== null);

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

// How far enough alloys are known to say what it is worth (0.22) is what the validation by distance found: science of this project.
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

test('a distance just beyond the border is printed so that it lies beyond', () => {
  const words = (platinum: number) => {
    const each = (100 - platinum) / 5;
    return phaseOf({ Co: each, Cr: each, Fe: each, Mn: each, Ni: each, Pt: platinum }, facts).words;
  };
  expect(words(22.5)).toMatch(/^No basis for an estimate: 22\.5 % of the atoms .* beyond 22 % too few/);
  expect(words(22.03)).toMatch(/^No basis for an estimate: 22\.03 % of the atoms /);
  expect(words(21.98)).toContain('The basis is weak: 21.98 % of the atoms');
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

test('the distance counts alloys whose phases were reported, and those alone', () => {
  const unknown = publishedAlloys().find(
    ({ phaseClass, composition }) =>
      phaseClass === null && near.every((one) => compositionDistance(composition, one.composition) > 0.05),
  )!;
  const nearest = Math.min(...near.map((one) => compositionDistance(unknown.composition, one.composition)));
  expect(phaseOf(unknown.composition, facts).nearestDistance).toBeCloseTo(nearest, 12);
});

test('an alloy in at.% and the same in wt.% get one number', () => {
  const atoms = parseAlloy('Al10Co20Cr30Fe15Ni25');
  const weights = Object.entries(atomicToWeightPercent(atoms)).map(
    ([symbol, share]) => `${symbol}${share.toFixed(10)}`,
  );
  const byWeight = phaseOf(parseAlloy(weights.join(' '), { by: 'weight' }), facts);
  expect(byWeight.singleSolution).toBeCloseTo(phaseOf(atoms, facts).singleSolution!, 8);
  expect(byWeight.likely).toEqual(phaseOf(atoms, facts).likely);
});

test('likely classes come likeliest first, at least one, and hold what is reported of most alloys', () => {
  const held = near.filter(({ composition, phaseClass }) => {
    const found = phaseOf(composition, facts);
    const said = found.likely!.map((name) => found[name]!);
    expect(said.length).toBeGreaterThan(0);
    expect(said).toEqual(said.toSorted((a, b) => b - a));
    const left = (['fcc', 'bcc', 'both', 'other'] as const).filter((name) => !found.likely!.includes(name));
    for (const name of left) expect(found[name]!).toBeLessThan(trainedPhaseReport.likelyFrom);
    return found.likely!.includes(phaseClass!);
  });
  // The model has seen these alloys: the sets hold more than the 80 % that they hold of others.
  expect(held.length / near.length).toBeGreaterThan(0.8);
});

test('a pure element and missing data give no number, an unknown element is a mistake of the caller', () => {
  expect(phaseOf({ Ni: 100 }, facts)).toMatchObject({ singleSolution: null, basis: 'none', likely: null });
  const lacking = withValues('boilingTemperature', { Ni: null });
  const found = phaseOf(parseAlloy('CoCrFeMnNi'), lacking);
  expect(found).toMatchObject({ singleSolution: null, basis: 'none', likely: null });
  expect(found.words).toContain('data of an element lack');
  expect(() => phaseOf({ Xx: 1 }, facts)).toThrow(RangeError);
});

test('how far to trust it is what the report says', () => {
  expect(phaseTrust).toContain(`AUC ${trainedPhaseReport.scores.auc.toFixed(2)}`);
  expect(phaseOf(parseAlloy('PtPd'), facts).trust).toBe(phaseTrust);
});
