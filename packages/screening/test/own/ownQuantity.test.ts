import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  bind,
  bounder,
  evaluator,
  missingFor,
  ownQuantity,
  quantities,
  screening,
  sensitivities,
  valuesOf,
} from '../../src/index.ts';
import { factsWith, pricedFacts } from '../fixtures/elements.ts';
import { faultsFrom } from '../fixtures/faultsFrom.ts';
import { random } from '../fixtures/random.ts';
import { randomPoint, randomRegion } from '../fixtures/regions.ts';

const facts = pricedFacts();
const merit = ownQuantity('merit', '0.4*min(omega,10)/10 - density/8', quantities);

describe('a figure of merit of one’s own is a quantity like any other', () => {
  test('it has a value', () => {
    const alloy = { Al: 10, Co: 30, Ni: 60 };
    const { omega, density } = valuesOf(alloy, facts) as Record<string, number>;
    const value = (0.4 * Math.min(omega!, 10)) / 10 - density! / 8;
    expect(screening(facts, [merit, 'density'])(alloy)).toEqual({ merit: value, density });
  });
  test('its sensitivities are those of its parts', () => {
    const alloy = { Co: 30, Cr: 20, Ni: 50 };
    const ofDensity = sensitivities('density', alloy, facts);
    const double = sensitivities(ownQuantity('double', '2*density', quantities), alloy, facts);
    for (const symbol of Object.keys(alloy)) expect(double[symbol]).toBeCloseTo(2 * ofDensity[symbol]!, 12);
  });
  test('its bounds hold the values of random points', () => {
    const program = bind([merit.formula], facts);
    const { evaluate } = evaluator(program);
    const into = new Float64Array(1);
    fc.assert(
      fc.property(fc.integer(), (seed) => {
        const source = random(seed);
        const region = randomRegion(facts.symbols.length, source);
        const { low, high } = bounder(program).bounds(region)[0]!;
        for (let trial = 0; trial < 20; trial++) {
          const point = randomPoint(region, source);
          if (!point) return;
          evaluate(point.members, point.amounts, region.total, into);
          if (!Number.isFinite(into[0])) continue;
          expect(into[0]).toBeGreaterThanOrEqual(low);
          expect(into[0]).toBeLessThanOrEqual(high);
        }
      }),
      { numRuns: 50 },
    );
  });
  test('it may name others that stand before it', () => {
    const twice = ownQuantity('twice', 'merit*2', [...quantities, merit]);
    const alloy = { Co: 30, Cr: 20, Ni: 50 };
    const values = valuesOf(alloy, facts, [merit, twice]);
    expect(values.twice).toBe(2 * values.merit!);
  });
  test.for([
    ['meltingTemperature^2', 'one/meltingTemperature + meltingTemperature', 'K^2/K'],
    ['sqrt(density)', 'one*one + density', '(g/cm3)^0.5 (g/cm3)^0.5'],
    ['meltingTemperature^(-1)', 'exp(-one*meltingTemperature)', ''],
    ['cost^2', 'sqrt(one) - cost', '((currency/kg)^2)^0.5'],
    ['2*density', 'one + density', 'g/cm3'],
    ['1/meltingTemperature', 'exp(one*meltingTemperature)', ''],
  ] as const)(
    'what may be written in one formula may be written in two: %s, then %s',
    ([first, second, unit]) => {
      const one = ownQuantity('one', first, quantities);
      const two = ownQuantity('two', second, [...quantities, one]);
      expect(two.unit).toBe(unit);
      expect(ownQuantity('two', second.replaceAll('one', `(${first})`), quantities).unit).toBe(unit);
      const alloy = { Co: 30, Cr: 20, Ni: 50 };
      const prices = factsWith({ Co: 30, Cr: 10, Ni: 20 });
      expect(valuesOf(alloy, prices, [two]).two).not.toBeNull();
    },
  );
  test('a wrong sum of it is refused as where it is written out', () => {
    const one = ownQuantity('one', 'meltingTemperature^2', quantities);
    const faults = faultsFrom(() => ownQuantity('two', 'one + meltingTemperature', [...quantities, one]));
    expect(faults).toMatchObject([{ code: 'expression/units' }]);
  });
  test('it has no value without a price that it names, and the price is named', () => {
    const perStrength = ownQuantity('perStrength', 'cost/yieldStrengthFcc', quantities);
    const alloy = { Co: 50, Ni: 50 };
    const prices = factsWith({ Ni: 20 });
    expect(valuesOf(alloy, prices, [perStrength]).perStrength).toBeNull();
    expect(missingFor(perStrength, alloy, prices)).toEqual([{ element: 'Co', value: 'price' }]);
    expect(perStrength.unit).toBe('currency/kg/MPa');
  });
});

describe('a name', () => {
  const faults = (name: string) =>
    faultsFrom(() => ownQuantity(name, 'density', [...quantities, merit], '/lets'));
  test.for(['', '2nd', 'my merit', 'größe', 'a-b', '__proto__', 'x'.repeat(65)])(
    '"%s" is refused',
    (name) => {
      expect(faults(name)).toMatchObject([{ code: 'expression/name', pointer: '/lets' }]);
    },
  );
  test.for(['density', 'min', 'merit'])('"%s" is taken', (name) => {
    expect(faults(name)).toMatchObject([{ code: 'expression/name-taken', pointer: '/lets' }]);
  });
  test('of letters, digits and underscores is fine', () => {
    expect(ownQuantity('per_mass2', 'density', quantities).id).toBe('per_mass2');
  });
});
