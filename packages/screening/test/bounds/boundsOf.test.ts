import type { Facts } from '@tiegel/contract';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  bind,
  bounder,
  boundsOf,
  evaluator,
  quantities,
  quantityById,
  type Region,
} from '../../src/index.ts';
import { pricedFacts, without, withoutPair } from '../fixtures/elements.ts';
import { everyPoint } from '../fixtures/everyPoint.ts';
import { withHoles } from '../fixtures/invented.ts';
import { boundPoints } from '../fixtures/propertyRuns.ts';
import { type Random, random } from '../fixtures/random.ts';
import { randomPoint, randomRegion } from '../fixtures/regions.ts';

const formulas = quantities.map(({ formula }) => formula);
const all = pricedFacts();

/** The facts of some elements alone. */
function cut(symbols: readonly string[]): Facts {
  const kept = [...all.symbols.keys()].filter((at) => symbols.includes(all.symbols[at]!));
  const only = <T>(values: T[]) => kept.map((at) => values[at]!);
  return {
    symbols: only(all.symbols),
    columns: Object.fromEntries(Object.entries(all.columns).map(([id, values]) => [id, only(values)])),
    pairs: Object.fromEntries(Object.entries(all.pairs).map(([id, rows]) => [id, only(rows).map(only)])),
  };
}

function regionOf(facts: Facts, total: number, bounds: Record<string, [min: number, max: number]>): Region {
  const elements = Object.entries(bounds).map(([symbol, [min, max]]) => ({
    index: facts.symbols.indexOf(symbol),
    min,
    max,
    optional: false,
  }));
  return { total, elements, components: { min: elements.length, max: elements.length } };
}

describe('bounds over a region', () => {
  test(
    `hold the values of ${boundPoints} random points for every quantity, missing data included`,
    () => {
      let points = 0;
      const oneRound = (source: Random) => {
        const pool = cut(source.some(all.symbols, source.whole(2, 20)));
        const facts = source.fraction() < 0.3 ? withHoles(pool, 0.05, source) : pool;
        const program = bind(formulas, facts);
        const { evaluate } = evaluator(program);
        const values = new Float64Array(formulas.length);
        const region = randomRegion(facts.symbols.length, source);
        const intervals = bounder(program).bounds(region);
        for (let trial = 0; trial < 50; trial++) {
          const point = randomPoint(region, source);
          if (!point) return;
          points++;
          evaluate(point.members, point.amounts, region.total, values);
          intervals.forEach(({ low, high, missing }, k) => {
            const value = values[k]!;
            const held = Number.isFinite(value)
              ? missing !== 'always' && low <= value && value <= high
              : missing !== 'never';
            // An assertion for each of some million values would take longer than all else.
            if (!held)
              expect.fail(`${quantities[k]!.id}: ${value} in ${low} ... ${high}, ${missing} missing`);
          });
        }
      };
      fc.assert(
        fc.property(fc.integer(), (seed) => oneRound(random(seed))),
        { numRuns: Math.ceil(boundPoints / 15) },
      );
      expect(points).toBeGreaterThanOrEqual(boundPoints);
    },
    120_000 + 10 * boundPoints,
  );

  test('of a single point are its values', () => {
    const facts = cut(['Al', 'Co', 'Cr', 'Ni']);
    const program = bind(formulas, facts);
    const region = regionOf(facts, 20, { Al: [1, 1], Co: [5, 5], Cr: [6, 6], Ni: [8, 8] });
    const values = new Float64Array(formulas.length);
    evaluator(program).evaluate([0, 1, 2, 3], [1, 5, 6, 8], 20, values);
    boundsOf(program, region).forEach(({ low, high, missing }, k) => {
      expect(missing).toBe('never');
      expect(high - low).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(values[k]!)));
    });
  });

  // How much wider than the true range, found by trying every point: what pruning lives on.
  test.for([
    ['valenceElectronConcentration', 1],
    ['meltingTemperature', 1],
    ['meanAtomicMass', 1],
    ['atomicVolume', 1],
    ['shearModulus', 1],
    ['oxideFormers', 1],
    ['homologousTemperature', 1],
    ['density', 1.02],
    ['pughRatio', 1.02],
    ['mismatchEntropy', 1.6],
    ['yieldStrengthBcc', 3.2],
    ['cost', 1.02],
    ['costPerLitre', 1.02],
    ['electronegativitySpread', 1.25],
    ['sizeMismatch', 1.6],
    ['configurationalEntropy', 1.26],
    ['mixingEnthalpy', 2.2],
  ] as const)('of %s over a wide region are at most %d times as wide as they must be', ([id, factor]) => {
    const facts = cut(['Al', 'Co', 'Cr', 'Fe', 'Ni']);
    const program = bind([quantityById(id).formula], facts);
    const region = regionOf(facts, 40, { Al: [2, 14], Co: [2, 14], Cr: [2, 14], Fe: [2, 14], Ni: [2, 14] });
    const { evaluate } = evaluator(program);
    const into = new Float64Array(1);
    let [least, greatest] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
    for (const { members, amounts } of everyPoint(region)) {
      evaluate(members, amounts, 40, into);
      least = Math.min(least, into[0]!);
      greatest = Math.max(greatest, into[0]!);
    }
    const { low, high } = boundsOf(program, region)[0]!;
    expect((high - low) / (greatest - least)).toBeLessThanOrEqual(factor + 1e-9);
  });

  test('see that elements must be there when so many components are asked for', () => {
    const facts = cut(['Al', 'Co', 'Cr', 'Cu', 'Fe', 'Ni', 'Ti']);
    const program = bind([quantityById('valenceElectronConcentration').formula], facts);
    const elements = facts.symbols.map((_, index) => ({ index, min: 1, max: 7, optional: true }));
    const whole: Region = { total: 20, elements, components: { min: 5, max: 6 } };
    const { low, high } = boundsOf(program, whole)[0]!;
    // Cu 35, Ni 35, Co 20, Fe and Cr 5 at.% is the highest; Al 35, Ti 35, Cr 20, Fe and Co 5 the lowest.
    expect(high).toBe((7 * 11 + 7 * 10 + 4 * 9 + 8 + 6) / 20);
    expect(low).toBe((7 * 3 + 7 * 4 + 4 * 6 + 8 + 9) / 20);
  });

  test('say whether a value may lack and whether it surely does', () => {
    const facts = without('density', 'Cr', cut(['Cr', 'Fe', 'Ni']));
    const program = bind([quantityById('density').formula, quantityById('mixingEnthalpy').formula], facts);
    const elements = [0, 1, 2].map((index) => ({ index, min: 1, max: 8, optional: index === 0 }));
    const region: Region = { total: 10, elements, components: { min: 2, max: 3 } };
    const missing = (one: Region) => boundsOf(program, one).map((interval) => interval.missing);
    expect(missing(region)).toEqual(['sometimes', 'never']);
    expect(missing({ ...region, components: { min: 3, max: 3 } })).toEqual(['always', 'never']);
    expect(missing({ ...region, components: { min: 2, max: 2 } })).toEqual(['never', 'never']);
  });

  test('say the same of a pair without a value', () => {
    const facts = withoutPair('Cr', 'Ni');
    const program = bind([quantityById('mixingEnthalpy').formula], facts);
    const elements = ['Cr', 'Fe', 'Ni'].map((symbol) => ({
      index: facts.symbols.indexOf(symbol),
      min: 1,
      max: 9,
      optional: symbol === 'Cr',
    }));
    const missing = (fewest: number, most: number) =>
      boundsOf(program, { total: 10, elements, components: { min: fewest, max: most } })[0]!.missing;
    expect(missing(2, 3)).toBe('sometimes');
    expect(missing(2, 2)).toBe('never');
    elements[0]!.optional = false;
    expect(missing(3, 3)).toBe('always');
  });
});
