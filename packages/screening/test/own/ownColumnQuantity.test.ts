import type { Mixing } from '@tiegel/contract/terms';
import { type OwnColumn, withOwnColumn } from '@tiegel/elements';
import { describe, expect, test } from 'vitest';
import {
  bind,
  boundsOf,
  missingFor,
  ownColumnQuantity,
  ownQuantity,
  quantities,
  sensitivities,
  valuesOf,
} from '../../src/index.ts';
import { factsWith } from '../fixtures/elements.ts';
import { faultsFrom } from '../fixtures/faultsFrom.ts';

const column = (mixing: Mixing, values: Record<string, number> = { Al: 10, Ni: 30 }): OwnColumn => ({
  id: 'ownValue',
  name: 'Own value',
  unit: 'W/(m K)',
  mixing,
  values,
});
const factsOf = (own: OwnColumn) => withOwnColumn(factsWith(), own);
const valueOfAlNi = (own: OwnColumn) => {
  const quantity = ownColumnQuantity(own, quantities);
  return valuesOf({ Al: 25, Ni: 75 }, factsOf(own), [quantity]).ownValue;
};

describe('a column of one’s own is mixed', () => {
  // Arithmetic on IUPAC masses 26.9815385 and 58.6934 u and CRC densities 2.70 and 8.90 g/cm³.
  const [al, ni] = [0.25 * 26.9815385, 0.75 * 58.6934];
  test.for([
    ['mole', 0.25 * 10 + 0.75 * 30],
    ['mass', (al * 10 + ni * 30) / (al + ni)],
    ['volume', ((al / 2.7) * 10 + (ni / 8.9) * 30) / (al / 2.7 + ni / 8.9)],
  ] as const)('by %s', ([mixing, value]) => {
    expect(valueOfAlNi(column(mixing))).toBeCloseTo(value, 12);
  });
  test('to its own value in a pure element and where all are equal', () => {
    for (const mixing of ['mole', 'mass', 'volume'] as const) {
      expect(valueOfAlNi(column(mixing, { Al: -7.5, Ni: -7.5 }))).toBeCloseTo(-7.5, 13);
    }
  });
});

describe('the quantity', () => {
  const own = column('mass');
  const quantity = ownColumnQuantity(own, quantities);

  test('has no value without that of an element, and names it', () => {
    const alloy = { Al: 25, Co: 25, Ni: 50 };
    expect(valuesOf(alloy, factsOf(own), [quantity]).ownValue).toBeNull();
    expect(missingFor(quantity, alloy, factsOf(own))).toEqual([{ element: 'Co', value: 'ownValue' }]);
  });
  test('can be named in a figure of merit, with its unit', () => {
    const known = [...quantities, quantity];
    const merit = ownQuantity('merit', 'ownValue/density', known);
    const values = valuesOf({ Al: 25, Ni: 75 }, factsOf(own), [merit, quantity, 'density']);
    expect(values.merit).toBe(values.ownValue! / values.density!);
    expect(merit.unit).toBe('W/(m K)/(g/cm3)');
    expect(faultsFrom(() => ownQuantity('sum', 'ownValue + density', known))).toMatchObject([
      { code: 'expression/units' },
    ]);
  });
  test('has bounds and sensitivities', () => {
    const facts = factsOf(own);
    const elements = ['Al', 'Ni'].map((symbol) => ({
      index: facts.symbols.indexOf(symbol),
      min: 1,
      max: 9,
      optional: false,
    }));
    const region = { total: 10, elements, components: { min: 2, max: 2 } };
    const { low, high } = boundsOf(bind([quantity.formula], facts), region)[0]!;
    // from 90 to 10 at.% aluminium, by mass; bounds of a quotient may be 2 % wider
    const byMass = (al: number) =>
      (al * 26.9815385 * 10 + (1 - al) * 58.6934 * 30) / (al * 26.9815385 + (1 - al) * 58.6934);
    expect(low).toBeLessThanOrEqual(byMass(0.9));
    expect(high).toBeGreaterThanOrEqual(byMass(0.1));
    expect(high - low).toBeLessThan(1.02 * (byMass(0.1) - byMass(0.9)));
    expect(sensitivities(quantity, { Al: 50, Ni: 50 }, facts).Ni).toBeGreaterThan(0);
  });
  test('may not take the id of another, nor that of a function', () => {
    expect(faultsFrom(() => ownColumnQuantity({ ...own, id: 'omega' }, quantities))).toMatchObject([
      { code: 'expression/name-taken' },
    ]);
    expect(faultsFrom(() => ownColumnQuantity({ ...own, id: 'min' }, quantities))).toMatchObject([
      { code: 'expression/name-taken' },
    ]);
  });
});
